package org.steadwork.exercise.dayplan;

import java.util.ArrayList;
import java.util.List;

/**
 * How much and how often an exercise is done. Either repetitions or minutes; how often at home as times a day, at the desk as
 * every so many hours, or neither for one session on each of its days.
 *
 * @param hold        seconds held in each repetition, [0, 300]; null when nothing is held
 * @param repetitions in each set and for each side, [1, 60]; null when the dose is in minutes
 * @param sides       how often the repetitions are done in a set, [1, 4]: 2 for each side, 4 for four ways
 * @param sets        [1, 10]; null counts as 1
 * @param minutes     of one session, [1, 180]; null when the dose is in repetitions
 * @param timesADay   sessions a day, [1, 24]; null when not given
 * @param everyHours  hours of work between sessions at the desk, [0.25, 12]; null when not given
 * @param daysAWeek   [1, 7]
 *
 *                    Limits: common practice, no source; they catch slips of the pen, not clinical errors.
 */
public record Dose(Range hold, Range repetitions, int sides, Range sets, Range minutes, Range timesADay, Range everyHours, Range daysAWeek) {

    /** Seconds a repetition takes when nothing longer is held. Common practice, no source. */
    public static final double SECONDS_OF_A_MOVEMENT = 3;

    public Dose {
        List<Slip> slips = slips(hold, repetitions, sides, sets, minutes, timesADay, everyHours, daysAWeek);
        if (!slips.isEmpty()) {
            throw new IllegalArgumentException(slips.get(0).message());
        }
    }

    /** A part of a dose that cannot be, with the reason for people. */
    public record Slip(Part part, String message) {
    }

    /** The parts of a dose. */
    public enum Part { HOLD, REPETITIONS, SIDES, SETS, MINUTES, TIMES_A_DAY, EVERY_HOURS, DAYS_A_WEEK }

    /** Returns everything that keeps these parts from being a dose; empty when they are one. */
    public static List<Slip> slips(Range hold, Range repetitions, int sides, Range sets, Range minutes, Range timesADay, Range everyHours,
            Range daysAWeek) {
        List<Slip> slips = new ArrayList<>();
        check(slips, Part.HOLD, "The hold", hold, 0, 300, " s", false);
        check(slips, Part.REPETITIONS, "Repetitions", repetitions, 1, 60, "", true);
        check(slips, Part.SETS, "Sets", sets, 1, 10, "", true);
        check(slips, Part.MINUTES, "Minutes", minutes, 1, 180, " min", false);
        check(slips, Part.TIMES_A_DAY, "Times a day", timesADay, 1, 24, "", true);
        check(slips, Part.EVERY_HOURS, "Hours between sessions", everyHours, .25, 12, " h", false);
        check(slips, Part.DAYS_A_WEEK, "Days a week", daysAWeek, 1, 7, "", true);
        if (!(sides >= 1 && sides <= 4)) {
            slips.add(new Slip(Part.SIDES, "Sides must be from 1 to 4, but was " + sides + "."));
        }
        if (daysAWeek == null) {
            slips.add(new Slip(Part.DAYS_A_WEEK, "Days a week are missing. Without them it is not a dose."));
        }
        if (repetitions == null && minutes == null) {
            slips.add(new Slip(Part.REPETITIONS, "Give repetitions, or minutes. Without one of them it is not a dose."));
        }
        if (repetitions != null && minutes != null) {
            slips.add(new Slip(Part.MINUTES, "Give repetitions or minutes, not both."));
        }
        if (repetitions == null && hold != null && hold.high() > 0) {
            slips.add(new Slip(Part.HOLD, "A hold needs repetitions."));
        }
        return slips;
    }

    /** Seconds of one session: repetitions with their hold, sides and sets, or the minutes; ranges count with their middle, rests not at all. */
    public double secondsASession() {
        return secondsASession(0);
    }

    /** @param tempo seconds of each repetition besides the hold, at least 0 */
    public double secondsASession(double tempo) {
        if (minutes != null) {
            return minutes.middle() * 60;
        }
        double held = hold == null ? 0 : hold.middle();
        double repetition = Math.max(held + tempo, SECONDS_OF_A_MOVEMENT);
        return repetition * repetitions.middle() * sides * (sets == null ? 1 : sets.middle());
    }

    public boolean isAtTheDesk() {
        return everyHours != null;
    }

    /** The same dose with how often it is done chosen: at the desk every so many hours. */
    public Dose everyHours(Range hours) {
        return new Dose(hold, repetitions, sides, sets, minutes, null, hours, daysAWeek);
    }

    public boolean hasHold() {
        return hold != null && hold.high() > 0;
    }

    private static void check(List<Slip> slips, Part part, String what, Range range, double least, double most, String unit, boolean whole) {
        if (range == null) {
            return;
        }
        if (!range.isWithin(least, most)) {
            slips.add(new Slip(part, what + " must be from " + Range.of(least) + " to " + Range.of(most) + unit + ", but was " + range.shown() + unit + "."));
        } else if (whole && !range.isWhole()) {
            slips.add(new Slip(part, what + " must be whole numbers, but was " + range.shown() + "."));
        }
    }
}
