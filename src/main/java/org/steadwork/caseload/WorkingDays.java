package org.steadwork.caseload;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Days from Monday to Friday; public holidays are not known here. */
final class WorkingDays {

    private WorkingDays() {
    }

    /** Returns the working days after {@code from} up to and with {@code to}: 0 on the same day, 1 from Friday to Monday; {@code to} is not earlier. */
    static int between(LocalDate from, LocalDate to) {
        long days = ChronoUnit.DAYS.between(from, to);
        if (days < 0) {
            throw new IllegalArgumentException("The later day must not come first, but the days were " + from + " and " + to);
        }
        int working = (int) (days / 7 * 5);
        LocalDate day = from.plusDays(days / 7 * 7);
        while (day.isBefore(to)) {
            day = day.plusDays(1);
            working += day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY ? 0 : 1;
        }
        return working;
    }
}
