package org.steadwork.exercise;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.steadwork.exercise.dayplan.Dose;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.Range;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** A prescription as typed; read once, checked field by field. {@code dose} is null when it cannot be one. */
record DoseForm(Dose dose, PrescribedSide side, String effort, Integer painCeiling, LocalDate startedOn, String note) {

    static final List<Option> SIDES = Option.of(PrescribedSide.class, PrescribedSide::label);

    private static final String ONE_RHYTHM = "Give times a day, or hours between sessions at work, not both.";

    static DoseForm read(Form form, Exercise exercise, LocalDate openedOn, LocalDate today) {
        PrescribedSide side = form.requiredChoice("side", "Side", PrescribedSide.class);
        Range hold = range(form, "hold", "The hold", "5 or 10-15");
        Range repetitions = range(form, "repetitions", "Repetitions", "10 or 8-12");
        Range sets = range(form, "sets", "Sets", "2 or 2-3");
        Range minutes = range(form, "minutes", "Minutes", "5 or 5-10");
        Range timesADay = range(form, "timesADay", "Times a day", "2 or 2-3");
        Range everyHours = range(form, "everyHours", "Hours between sessions", "2 or 1-2");
        Range daysAWeek = range(form, "daysAWeek", "Days a week", "7 or 3-5");
        if (timesADay != null && everyHours != null) {
            form.error("everyHours", ONE_RHYTHM);
        }
        int sides = side == null ? exercise.dose().sides() : side.sides(exercise);
        for (Dose.Slip slip : Dose.slips(hold, repetitions, sides, sets, minutes, timesADay, everyHours, daysAWeek)) {
            form.error(field(slip.part()), slip.message());
        }
        String effort = form.requiredText("effort", "Load, effort or feeling", 200);
        Integer ceiling = form.integer("painCeiling", "Pain limit", 0, 10);
        if (ceiling == null) {
            form.error("painCeiling", "Pain limit is missing. Enter a whole number from 0 to 10.");
        }
        LocalDate startedOn = form.requiredDate("startedOn", "Start");
        if (startedOn != null && (startedOn.isBefore(openedOn) || startedOn.isAfter(today.plusYears(1)))) {
            form.error("startedOn", "The start lies between the opening of the case, " + Dates.shown(openedOn) + ", and one year from now. You entered "
                    + Dates.shown(startedOn) + ".");
        }
        String note = form.text("note", 500);
        Dose dose = form.hasErrors() ? null : new Dose(hold, repetitions, sides, sets, minutes, timesADay, everyHours, daysAWeek);
        return new DoseForm(dose, side, effort, ceiling, startedOn, note);
    }

    /** The usual dose, at the desk or at home as the exercise goes; {@code held} is the slow desk dose with longer holds. */
    static Form proposal(Exercise exercise, Dose dose, LocalDate today) {
        boolean desk = exercise.desk() && dose.everyHours() != null;
        return fill(Form.empty(), dose, desk, PrescribedSide.usual(exercise)).with("effort", exercise.kind().effort())
                .with("painCeiling", exercise.kind().painCeiling()).with("startedOn", Dates.shown(today)).with("note", "");
    }

    static Form show(Prescription p) {
        return fill(Form.empty().with("version", p.version()), p.dose(), p.dose().everyHours() != null, p.side()).with("effort", p.effort())
                .with("painCeiling", p.painCeiling()).with("startedOn", Dates.shown(p.startedOn())).with("note", p.note());
    }

    void fill(Prescription prescription) {
        prescription.dose(dose, side, effort, painCeiling, note);
    }

    private static Form fill(Form form, Dose dose, boolean desk, PrescribedSide side) {
        return form.with("side", side.name().toLowerCase(Locale.ROOT)).with("hold", dose.hasHold() ? dose.hold() : null).with("repetitions", dose.repetitions())
                .with("sets", dose.sets()).with("minutes", dose.minutes()).with("timesADay", desk ? null : dose.timesADay())
                .with("everyHours", desk ? dose.everyHours() : null).with("daysAWeek", dose.daysAWeek());
    }

    private static Range range(Form form, String field, String label, String example) {
        String text = form.text(field, 20);
        if (text == null) {
            return null;
        }
        try {
            return Range.parse(text);
        } catch (IllegalArgumentException e) {
            form.error(field, label + " must be a number or a range, for example " + example + ". You entered “" + text + "”.");
            return null;
        }
    }

    private static String field(Dose.Part part) {
        return switch (part) {
            case HOLD -> "hold";
            case REPETITIONS -> "repetitions";
            case SIDES -> "side";
            case SETS -> "sets";
            case MINUTES -> "minutes";
            case TIMES_A_DAY -> "timesADay";
            case EVERY_HOURS -> "everyHours";
            case DAYS_A_WEEK -> "daysAWeek";
        };
    }
}
