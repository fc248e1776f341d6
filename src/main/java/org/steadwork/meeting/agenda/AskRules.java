package org.steadwork.meeting.agenda;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What only a person can know: a clinician asks for the case to be discussed and says why. */
final class AskRules {

    private static final Set<AskKind> CONFLICT = Set.of(AskKind.CONFLICT_OF_ADVICE, AskKind.COMPLAINT, AskKind.SAFETY_INCIDENT);

    private AskRules() {
    }

    /** Conflict of advice, complaint, safety incident; the flag for different advice counts as the first. */
    static List<Reason> conflict(Criterion criterion, CaseFacts facts) {
        List<Reason> reasons = new ArrayList<>();
        facts.asks().stream().filter(ask -> CONFLICT.contains(ask.kind())).map(ask -> reason(criterion, ask)).forEach(reasons::add);
        facts.person().black().stream().filter(flag -> criterion.keys().contains(flag.key())).findFirst().ifPresent(flag -> reasons.add(criterion.holds(
                "Conflict of advice: the black flag “" + flag.name() + "” is present.", new Figure("Black", flag.name()))));
        return reasons;
    }

    static List<Reason> asked(Criterion criterion, CaseFacts facts) {
        return facts.asks().stream().filter(ask -> ask.kind() == AskKind.MEMBER).map(ask -> reason(criterion, ask)).toList();
    }

    static Reason reason(Criterion criterion, CaseFacts.Ask ask) {
        return criterion.holds(ask.kind().label() + ", " + ask.by() + " on " + Days.shown(ask.on()) + ": " + ask.words(),
                new Figure(ask.kind().label(), ask.words() + " (" + ask.by() + ", " + Days.shown(ask.on()) + ")"));
    }
}
