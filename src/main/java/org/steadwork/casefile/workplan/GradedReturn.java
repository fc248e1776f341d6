package org.steadwork.casefile.workplan;

import java.util.ArrayList;
import java.util.List;

/**
 * A graded return to work: minutes a week rise in equal parts from a start share to the normal week.
 *
 * <p>Week w of n: N × (s + (1 − s) × (w − 1) ÷ n), rounded half up to half or whole hours, in exact whole numbers (binary fractions
 * give 31.0 h for 31.5 h in a published example); the week after the last is the normal week. An uneven normal week stays as it is.
 *
 * @param normalWeekMinutes N, from 30 to 6000 minutes
 * @param startPercent s, from 1 to 99 % of the normal week
 * @param weeks n, from 1 to 26 phased weeks; over four are seldom useful except after long absence (one physician's opinion)
 * @param stepMinutes 30 for half hours, as in the published plans, or 60 for whole hours
 * Source: common practice of graded return; worked plans of two to four weeks from published guidance.
 */
public record GradedReturn(int normalWeekMinutes, int startPercent, int weeks, int stepMinutes) {

    private static final int HALF_HOUR = 30;
    private static final int HOUR = 60;

    public GradedReturn {
        if (normalWeekMinutes < HALF_HOUR || normalWeekMinutes > 6_000) {
            throw new IllegalArgumentException("A normal week must have 0.5 to 100 hours, but has " + normalWeekMinutes + " minutes");
        }
        if (startPercent < 1 || startPercent > 99) {
            throw new IllegalArgumentException("The start must be 1 to 99 % of the normal week, but is " + startPercent + " %");
        }
        if (weeks < 1 || weeks > 26) {
            throw new IllegalArgumentException("A plan has 1 to 26 weeks, but this one has " + weeks);
        }
        if (stepMinutes != HALF_HOUR && stepMinutes != HOUR) {
            throw new IllegalArgumentException("Weeks are rounded to 30 or 60 minutes, not to " + stepMinutes);
        }
    }

    /** Makes a plan in half hours. */
    public GradedReturn(int normalWeekMinutes, int startPercent, int weeks) {
        this(normalWeekMinutes, startPercent, weeks, HALF_HOUR);
    }

    /** Returns the minutes of a week from 1 to {@code weeks}; from the week after on, the normal week. */
    public int minutesOfWeek(int week) {
        if (week < 1) {
            throw new IllegalArgumentException("Weeks are counted from 1, but this is " + week);
        }
        if (week > weeks) {
            return normalWeekMinutes;
        }
        long numerator = (long) normalWeekMinutes * (startPercent * weeks + (100 - startPercent) * (week - 1));
        long denominator = 100L * weeks * stepMinutes;
        long steps = (2 * numerator + denominator) / (2 * denominator);
        return (int) Math.min(normalWeekMinutes, steps * stepMinutes);
    }

    /** Returns the minutes of the phased weeks in order. */
    public List<Integer> phasedWeeks() {
        List<Integer> minutes = new ArrayList<>();
        for (int week = 1; week <= weeks; week++) {
            minutes.add(minutesOfWeek(week));
        }
        return minutes;
    }

    /** Returns the minutes not worked over the phased weeks. */
    public int minutesNotWorked() {
        return phasedWeeks().stream().mapToInt(minutes -> normalWeekMinutes - minutes).sum();
    }
}
