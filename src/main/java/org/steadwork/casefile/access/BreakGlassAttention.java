package org.steadwork.casefile.access;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseScope;

/** Tells the lead of cases that were opened from outside their care team, until a lead has looked at each. */
@ApplicationScoped
class BreakGlassAttention implements Attention {

    private static final String RULE = "break_glass";

    @Inject
    CareTeams teams;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(RULE);
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        return teams.notLookedAt().stream().filter(opened -> scope.holds(opened.caseFile().id())).map(this::entry).toList();
    }

    private Entry entry(BreakGlass opened) {
        return rules.rule(RULE).entry(opened.caseFile(), String.valueOf(opened.id()), LocalDate.ofInstant(opened.openedAt(), ZoneId.systemDefault()),
                "/clinic/break-glass", Map.of("who", opened.account().displayName(), "why", opened.reason()));
    }
}
