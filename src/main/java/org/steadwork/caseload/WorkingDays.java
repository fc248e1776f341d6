package org.steadwork.caseload;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Days from Monday to Friday; public holidays are not known here. */
final class WorkingDays {

    private static final int SATURDAY = 6;
    private static final int SUNDAY = 7;

    private WorkingDays() {
    }

    /** Returns the working days after {@code from} up to and with {@code to}: 0 on the same day, 1 from Friday to Monday; {@code to} is not earlier. */
    static int between(LocalDate from, LocalDate to) {
        long days = ChronoUnit.DAYS.between(from, to);
        if (days < 0) {
            throw new IllegalArgumentException("The later day must not come first, but the days were " + from + " and " + to);
        }
        int working = (int) (days / 7 * 5);
        int weekday = from.getDayOfWeek().getValue();
        for (int left = (int) (days % 7); left > 0; left--) {
            weekday = weekday == SUNDAY ? 1 : weekday + 1;
            working += weekday < SATURDAY ? 1 : 0;
        }
        return working;
    }
}
