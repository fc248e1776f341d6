package org.steadwork.meeting.agenda;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Absence, the return to work, and what the employer was asked for. */
final class WorkRules {

    private WorkRules() {
    }

    /** Calendar days of the present spell off, that day included; 0 when not off, or not known. */
    static long daysOff(CaseFacts facts) {
        LocalDate since = facts.work().offSince();
        return since == null ? 0 : Days.between(since, facts.today()) + 1;
    }

    static List<Reason> offWork(Criterion criterion, CaseFacts facts) {
        List<Reason> reasons = new ArrayList<>();
        long off = daysOff(facts);
        if (off > criterion.number("days_off")) {
            reasons.add(criterion.holds("Off work for " + Days.counted(off, "day") + ".", new Figure("Off since", Days.shown(facts.work().offSince()))));
        }
        List<LocalDate> back = facts.work().stepsBack();
        if (back.size() >= criterion.number("steps_back")) {
            reasons.add(criterion.holds("The return plan was put back " + Days.counted(back.size(), "time") + ".",
                    back.stream().map(day -> new Figure("Put back", Days.shown(day))).toList()));
        }
        if (reasons.isEmpty() && facts.work().status() == null) {
            return List.of(criterion.unknown("Whether the person is at work is not known."));
        }
        return reasons;
    }

    /** The employer said no, or what was asked for so many days ago is not in place. */
    static List<Reason> employer(Criterion criterion, CaseFacts facts) {
        int days = criterion.number("days");
        List<Reason> reasons = new ArrayList<>();
        facts.asks().stream().filter(ask -> ask.kind() == AskKind.EMPLOYER_DECLINED).map(ask -> AskRules.reason(criterion, ask)).forEach(reasons::add);
        List<CaseFacts.Change> waiting = facts.workplace().changes().stream().filter(change -> Days.between(change.askedOn(), facts.today()) >= days).toList();
        if (!waiting.isEmpty()) {
            reasons.add(criterion.holds(Days.counted(waiting.size(), "change") + " asked for " + days + " days ago or more and not in place: "
                    + waiting.get(0).what() + (waiting.size() > 1 ? " and others." : "."), waiting.stream().map(change -> new Figure(change.what(),
                    (change.with() == null ? "advised " : "agreed with " + change.with() + ", ") + Days.shown(change.askedOn()))).toList()));
        }
        List<CaseFacts.Sent> silent = facts.workplace().letters().stream().filter(sent -> Days.between(sent.on(), facts.today()) >= days).toList();
        if (!silent.isEmpty()) {
            reasons.add(criterion.unknown("Whether the employer acted is not known: no answer to “" + silent.get(0).what() + "” sent "
                    + Days.shown(silent.get(0).on()) + "."));
        }
        return reasons;
    }
}
