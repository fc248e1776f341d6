package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseScope;
import org.steadwork.diary.rules.MissedVisit;
import org.steadwork.web.Dates;

/** Missed visits after which something is to be done now. Today says the same next step as the diary, and both are cleared there. */
@ApplicationScoped
class MissedAttention implements Attention {

    private static final String RULE = "missed_visit";
    private static final Set<MissedVisit.Step> NOTHING_NOW = Set.of(MissedVisit.Step.DONE, MissedVisit.Step.WAIT);

    @Inject
    FollowUps missed;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(RULE);
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        return missed.ofCases(scope, today).stream().filter(one -> !NOTHING_NOW.contains(one.step())).map(this::entry).toList();
    }

    private Entry entry(Missed one) {
        return rules.rule(RULE).entry(one.caseFile(), String.valueOf(one.visit().number()), one.day(), "/diary/missed/" + one.key(),
                Map.of("visit", String.valueOf(one.visit().number()), "day", Dates.shown(one.day()), "step", one.label(), "next", one.words()));
    }
}
