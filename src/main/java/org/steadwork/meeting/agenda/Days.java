package org.steadwork.meeting.agenda;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Days in the words of reasons. */
final class Days {

    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("d\u00a0MMM\u00a0uuuu", Locale.ENGLISH);

    private Days() {
    }

    static String shown(LocalDate day) {
        return SHOWN.format(day);
    }

    static long between(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to);
    }

    static String counted(long number, String one) {
        return number + "\u00a0" + one + (number == 1 ? "" : "s");
    }
}
