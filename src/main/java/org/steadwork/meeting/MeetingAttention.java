package org.steadwork.meeting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRule;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseScope;
import org.steadwork.web.Dates;

/** Tells Today which actions of review meetings are due, and which decisions wait for the treating clinician's answer. */
@ApplicationScoped
class MeetingAttention implements Attention {

    private static final String DUE = "meeting_action_due";
    private static final String OVERDUE = "meeting_action_overdue";
    private static final String ADVISED = "meeting_advised";

    @Inject
    CaseOutcomes outcomes;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(DUE, OVERDUE, ADVISED);
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        List<Entry> entries = new ArrayList<>();
        LocalDate horizon = today.plusDays(rules.rule(DUE).setting("days"));
        outcomes.openActions().stream().filter(action -> scope.holds(action.caseFile().id()) && !action.dueOn().isAfter(horizon))
                .map(action -> due(action, rules.rule(action.dueOn().isBefore(today) ? OVERDUE : DUE))).forEach(entries::add);
        outcomes.unanswered().stream().filter(decision -> scope.holds(decision.caseFile().id())).map(this::advised).forEach(entries::add);
        return entries;
    }

    private static Entry due(MeetingAction action, AttentionRule rule) {
        return rule.entry(action.caseFile(), String.valueOf(action.id()), action.dueOn(), "/cases/" + action.caseFile().id() + "/meetings#action-" + action.id(),
                Map.of("meeting", Dates.shown(action.meeting().heldOn()), "day", Dates.shown(action.dueOn()), "who", action.who().displayName(), "action", action.words()));
    }

    private Entry advised(Decision decision) {
        return rules.rule(ADVISED).entry(decision.caseFile(), String.valueOf(decision.id()), decision.meeting().heldOn(),
                "/cases/" + decision.caseFile().id() + "/meetings#decision-" + decision.id(),
                Map.of("meeting", Dates.shown(decision.meeting().heldOn()), "decision", decision.words()));
    }
}
