package org.steadwork.exercise.dayplan;

import java.util.ArrayList;
import java.util.List;

/** Says a dose in plain words, as it stands on the patient's sheet. */
public final class DoseWords {

    private DoseWords() {
    }

    /** For example {@code 5 to 10 times each side, hold for 3 s, every 2 hours at work, every day}. */
    public static String of(Dose dose, String per) {
        List<String> parts = new ArrayList<>();
        if (dose.minutes() != null) {
            parts.add(dose.minutes().shown() + " minutes");
        } else {
            parts.add(times(dose.repetitions()) + (dose.sides() > 1 && !per.isEmpty() ? " each " + per : ""));
        }
        if (dose.hasHold()) {
            parts.add("hold for " + dose.hold().shown() + (dose.hold().high() == 1 ? " second" : " seconds"));
        }
        if (dose.sets() != null && dose.sets().high() > 1) {
            parts.add(dose.sets().shown() + " sets");
        }
        parts.addAll(howOften(dose));
        return String.join(", ", parts);
    }

    /** The usual dose of an exercise: at work where it is done at the desk, else at home. */
    public static String usual(Exercise exercise) {
        Dose dose = exercise.dose();
        return of(exercise.desk() && dose.everyHours() != null ? dose.everyHours(dose.everyHours()) : dose, exercise.per());
    }

    private static List<String> howOften(Dose dose) {
        List<String> parts = new ArrayList<>();
        if (dose.everyHours() != null) {
            parts.add(every(dose.everyHours()) + " at work");
        } else if (dose.timesADay() != null && dose.timesADay().high() > 1) {
            parts.add(times(dose.timesADay()) + " a day");
        } else {
            parts.add("once a day");
        }
        if (dose.everyHours() == null || dose.daysAWeek().high() < 5) {
            parts.add(dose.daysAWeek().low() == 7 ? "every day" : dose.daysAWeek().high() == 1 ? "one day a week" : dose.daysAWeek().shown() + " days a week");
        }
        return parts;
    }

    private static String every(Range hours) {
        if (hours.high() <= 1 && hours.low() < 1) {
            return "every " + Range.of(hours.low() * 60, hours.high() * 60).shown() + " minutes";
        }
        return hours.isSingle() && hours.high() == 1 ? "every hour" : "every " + hours.shown() + " hours";
    }

    private static String times(Range range) {
        return range.isSingle() && range.low() == 1 ? "once" : range.isSingle() && range.low() == 2 ? "twice" : range.shown() + " times";
    }
}
