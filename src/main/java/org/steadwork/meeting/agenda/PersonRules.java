package org.steadwork.meeting.agenda;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Psychosocial and work flags by count. Obstacles to work round, never a label. */
final class PersonRules {

    private PersonRules() {
    }

    /** Any orange flag, so many yellow and blue ones, a raised screen, or a black one with long absence. */
    static List<Reason> psychosocial(Criterion criterion, CaseFacts facts) {
        CaseFacts.Person person = facts.person();
        List<Reason> reasons = new ArrayList<>();
        if (!person.orange().isEmpty()) {
            reasons.add(criterion.holds("Orange flag, which takes its own route: " + names(person.orange()) + ".", figure("Orange", person.orange())));
        }
        int count = person.yellow().size() + person.blue().size();
        if (count >= criterion.number("person_or_work")) {
            reasons.add(criterion.holds(count + " yellow or blue flags.", figure("Yellow", person.yellow()), figure("Blue", person.blue())));
        }
        person.screen().filter(screen -> Boolean.TRUE.equals(screen.raised())).ifPresent(screen -> reasons.add(criterion.holds(
                "The screen asks for more support: " + screen.label() + " " + screen.score() + ", " + Days.shown(screen.on()) + ".",
                new Figure(screen.label(), screen.score() + " on " + Days.shown(screen.on())))));
        long off = WorkRules.daysOff(facts);
        if (!person.black().isEmpty() && off > criterion.number("days_off")) {
            reasons.add(criterion.holds("Black flag and " + Days.counted(off, "day") + " off: " + names(person.black()) + ".",
                    figure("Black", person.black()), new Figure("Off since", Days.shown(facts.work().offSince()))));
        }
        if (!reasons.isEmpty()) {
            return reasons;
        }
        boolean screenOpen = person.screen().filter(screen -> screen.raised() != null).isEmpty();
        if (person.settled() == 0 && screenOpen) {
            return List.of(criterion.unknown(person.screen().isPresent() ? "Psychosocial flags were not asked about, and items of the screen are missing."
                    : "Psychosocial flags were not asked about, and no risk screen was taken."));
        }
        return List.of();
    }

    private static Figure figure(String colour, List<CaseFacts.Present> flags) {
        return new Figure(colour, flags.isEmpty() ? "none present" : names(flags));
    }

    private static String names(List<CaseFacts.Present> flags) {
        return flags.stream().map(CaseFacts.Present::name).collect(Collectors.joining("; "));
    }
}
