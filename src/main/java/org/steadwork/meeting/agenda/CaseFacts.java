package org.steadwork.meeting.agenda;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.outcome.scoring.ChangeVerdict;

/**
 * What is known of one open case on a day, as far as the criteria of the review meeting look at it.
 *
 * @param openedOn  day of the first visit
 * @param measures  the outcome measures with at least one score, the leading one first
 * @param contacts  visits held or missed up to the day, the earliest first
 * @param plannedVisits number agreed for this case, or null when none was
 */
public record CaseFacts(LocalDate today, LocalDate openedOn, List<Measure> measures, Safety safety, Person person, Work work, List<Contact> contacts,
        Programme programme, Workplace workplace, List<Ask> asks, Integer plannedVisits) {

    public CaseFacts {
        measures = List.copyOf(measures);
        contacts = List.copyOf(contacts);
        asks = List.copyOf(asks);
    }

    long attended() {
        return contacts.stream().filter(contact -> !contact.missed()).count();
    }

    /**
     * An outcome measure.
     *
     * @param scores   its scores, the earliest first
     * @param since    the judgement on the latest against the first; empty while there is nothing to compare
     * @param everyDays days after which it is due again, 0 for once only
     */
    public record Measure(String label, List<Score> scores, Optional<ChangeVerdict.Kind> since, int everyDays) {

        public Measure {
            scores = List.copyOf(scores);
        }

        String course() {
            return scores.get(0).shown() + " on " + Days.shown(scores.get(0).on())
                    + (scores.size() == 1 ? "" : ", " + latest().shown() + " on " + Days.shown(latest().on()));
        }

        Score latest() {
            return scores.get(scores.size() - 1);
        }
    }

    /**
     * One score.
     *
     * @param worse    true when it is worse than the first by more than measurement error
     * @param remembered true when the amount that says so is only remembered, so that it counts as not known
     */
    public record Score(LocalDate on, String shown, boolean worse, boolean remembered) {
    }

    /** How the red-flag questions stand. */
    public enum Screen {
        NONE, INCOMPLETE, COMPLETE
    }

    /** The red flags, open ones and closed ones; {@code screenedOn} is null when no question was asked. */
    public record Safety(Screen screen, LocalDate screenedOn, List<Flag> flags) {

        public Safety {
            flags = List.copyOf(flags);
        }
    }

    /** One red flag; {@code closedOn} is null while it is open, {@code origin} the key of its question or rule. */
    public record Flag(String origin, String name, String level, LocalDate raisedOn, LocalDate closedOn) {
    }

    /**
     * What was found of psychosocial and work flags, by colour, in neutral names.
     *
     * @param settled  how many were answered present or absent
     * @param screen   the risk screen taken last; empty when none was
     */
    public record Person(List<Present> orange, List<Present> yellow, List<Present> blue, List<Present> black, int settled, Optional<RiskScreen> screen) {

        public Person {
            orange = List.copyOf(orange);
            yellow = List.copyOf(yellow);
            blue = List.copyOf(blue);
            black = List.copyOf(black);
        }
    }

    /** A flag that is present: its key in the content and its name. */
    public record Present(String key, String name) {
    }

    /** A risk screen; {@code raised} is null when missing items leave it open. */
    public record RiskScreen(String label, LocalDate on, String score, Boolean raised) {
    }

    /**
     * How work stands.
     *
     * @param status    the status that holds on the day, in words; null when not known
     * @param offSince  first day of the present spell off for this problem; null when not off, or not known
     * @param stepsBack days on which a return plan was put back a step
     */
    public record Work(String status, LocalDate offSince, List<LocalDate> stepsBack) {

        public Work {
            stepsBack = List.copyOf(stepsBack);
        }
    }

    /** A visit that was held or missed. */
    public record Contact(LocalDate on, boolean missed) {
    }

    /** Whether exercises are given now, and what was reported of them, sessions of all of them summed, the earliest first. */
    public record Programme(boolean given, List<Week> weeks) {

        public Programme {
            weeks = List.copyOf(weeks);
        }
    }

    /** Sessions of the seven days to a day; {@code done} is null when not reported, {@code planned} 0 or more. */
    public record Week(LocalDate to, Integer done, int planned) {
    }

    /** What was asked of the employer, and letters sent there. */
    public record Workplace(List<Change> changes, List<Sent> letters) {

        public Workplace {
            changes = List.copyOf(changes);
            letters = List.copyOf(letters);
        }
    }

    /** A change that was advised or agreed and is not in place. */
    public record Change(String what, LocalDate askedOn, String with) {
    }

    /** A letter to the employer that nobody has answered. */
    public record Sent(String what, LocalDate on) {
    }

    /** Somebody asks for the case to be discussed. */
    public record Ask(AskKind kind, String words, String by, LocalDate on) {
    }
}
