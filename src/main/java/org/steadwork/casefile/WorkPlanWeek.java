package org.steadwork.casefile;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Map;

/**
 * One week of a graded return.
 *
 * @param number from 1; the last one is the normal week
 * @param minutes of the week
 * @param byDay minutes of each working day in the order of the week, 0 for a rest day
 * @param normal true for the week of usual hours
 */
public record WorkPlanWeek(int number, LocalDate from, LocalDate until, int minutes, Map<DayOfWeek, Integer> byDay, boolean normal) {

    /** Says the hours of the week, for example 31.5 h. */
    public String hours() {
        return hours(minutes);
    }

    /** Says the hours of each day in order, a rest day as a word. */
    public java.util.List<String> dayHours() {
        return byDay.values().stream().map(day -> day == 0 ? "rest" : clock(day)).toList();
    }

    static String hours(int minutes) {
        return java.math.BigDecimal.valueOf(minutes).divide(java.math.BigDecimal.valueOf(60), 2, java.math.RoundingMode.HALF_UP)
                .stripTrailingZeros().toPlainString() + "\u00a0h";
    }

    private static String clock(int minutes) {
        return minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
    }
}
