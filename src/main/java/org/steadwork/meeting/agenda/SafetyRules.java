package org.steadwork.meeting.agenda;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What must not be missed. Urgent cases never wait for a meeting. */
final class SafetyRules {

    private SafetyRules() {
    }

    /** A flag of the nervous system raised lately, or one that a clinician found. */
    static List<Reason> neurological(Criterion criterion, CaseFacts facts) {
        LocalDate from = facts.today().minusDays(criterion.number("days"));
        List<Reason> reasons = new ArrayList<>();
        facts.asks().stream().filter(ask -> ask.kind() == AskKind.NEUROLOGICAL_SIGN).map(ask -> AskRules.reason(criterion, ask)).forEach(reasons::add);
        List<CaseFacts.Flag> raised = facts.safety().flags().stream().filter(flag -> criterion.keys().contains(flag.origin()))
                .filter(flag -> !flag.raisedOn().isBefore(from)).toList();
        if (!raised.isEmpty()) {
            reasons.add(criterion.holds("New neurological sign: " + raised.get(0).name() + ", " + Days.shown(raised.get(0).raisedOn()) + ".",
                    raised.stream().map(SafetyRules::figure).toList()));
        }
        return reasons;
    }

    /** A red flag stands open, or was closed lately; questions that were not asked are not a no. */
    static List<Reason> redFlag(Criterion criterion, CaseFacts facts) {
        CaseFacts.Safety safety = facts.safety();
        int days = criterion.number("days_after_closing");
        List<CaseFacts.Flag> open = safety.flags().stream().filter(flag -> flag.closedOn() == null).toList();
        List<CaseFacts.Flag> lately = safety.flags().stream().filter(flag -> flag.closedOn() != null
                && Days.between(flag.closedOn(), facts.today()) < days).toList();
        if (!open.isEmpty() || !lately.isEmpty()) {
            CaseFacts.Flag first = open.isEmpty() ? lately.get(0) : open.get(0);
            String words = open.isEmpty() ? "Red flag closed on " + Days.shown(first.closedOn()) + ", less than " + days + " days ago: " + first.name() + "."
                    : "Red flag open since " + Days.shown(first.raisedOn()) + ": " + first.name() + ", " + first.level() + ".";
            List<CaseFacts.Flag> both = new ArrayList<>(open);
            both.addAll(lately);
            return List.of(criterion.holds(words, both.stream().map(SafetyRules::figure).toList()));
        }
        return switch (safety.screen()) {
            case COMPLETE -> List.of();
            case INCOMPLETE -> List.of(criterion.unknown("The red-flag screen of " + Days.shown(safety.screenedOn()) + " is not complete and signed."));
            case NONE -> List.of(criterion.unknown("No red-flag question was asked."));
        };
    }

    private static Figure figure(CaseFacts.Flag flag) {
        return new Figure(flag.name(), flag.level() + ", raised " + Days.shown(flag.raisedOn())
                + (flag.closedOn() == null ? ", open" : ", closed " + Days.shown(flag.closedOn())));
    }
}
