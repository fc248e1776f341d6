package org.steadwork.diary.rules;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Local times of the clinic: written, read, and laid on the line of moments where clocks change. */
public final class ClinicTime {

    private static final Pattern TYPED = Pattern.compile("(\\d{1,2})(?:[:.h](\\d{2}))?|(\\d{2})(\\d{2})");
    private static final int HOUR = 60;
    private static final int LONGEST_CLOSURE_DAYS = 30;

    private ClinicTime() {
    }

    /** Writes minutes since midnight, in [0, 1440], as {@code 09:30}. */
    public static String shown(int minute) {
        return "%02d:%02d".formatted(minute / HOUR, minute % HOUR);
    }

    /** Reads 9:30, 09.30, 0930 or 9; empty when it is none of these or outside [0:00, 24:00]. */
    public static OptionalInt read(String typed) {
        Matcher time = TYPED.matcher(typed.strip());
        if (!time.matches()) {
            return OptionalInt.empty();
        }
        int hours = Integer.parseInt(time.group(1) == null ? time.group(3) : time.group(1));
        String minutes = time.group(1) == null ? time.group(4) : time.group(2);
        int minute = minutes == null ? 0 : Integer.parseInt(minutes);
        int all = hours * HOUR + minute;
        return minute >= HOUR || all > Span.DAY ? OptionalInt.empty() : OptionalInt.of(all);
    }

    /** False for a time that the clocks leap over on that day. */
    public static boolean exists(LocalDate day, int minute, ZoneId zone) {
        LocalDateTime local = local(day, minute);
        return !zone.getRules().getValidOffsets(local).isEmpty();
    }

    /** The moment of a local time; of a time that comes twice when clocks go back, the first. */
    public static Instant at(LocalDate day, int minute, ZoneId zone) {
        return local(day, minute).atZone(zone).toInstant();
    }

    /** True when less notice was given than the clinic asks for, in hours that really pass. */
    public static boolean shortNotice(LocalDate day, int start, Instant given, int hours, ZoneId zone) {
        return Duration.between(given, at(day, start, zone)).compareTo(Duration.ofHours(hours)) < 0;
    }

    /**
     * The end of the time for which reminders are due: so many hours from now, and a day more for each day in between on which the
     * clinic is closed, so that nobody is left out over a weekend.
     */
    public static Instant remindUntil(Instant now, int hours, Predicate<LocalDate> closed, ZoneId zone) {
        Instant until = now.plus(Duration.ofHours(hours));
        LocalDate day = now.atZone(zone).toLocalDate().plusDays(1);
        for (int added = 0; added < LONGEST_CLOSURE_DAYS && !day.isAfter(until.atZone(zone).toLocalDate()); day = day.plusDays(1)) {
            if (closed.test(day)) {
                until = until.atZone(zone).plusDays(1).toInstant();
                added++;
            }
        }
        return until;
    }

    private static LocalDateTime local(LocalDate day, int minute) {
        return minute == Span.DAY ? day.plusDays(1).atStartOfDay() : day.atTime(LocalTime.ofSecondOfDay(minute * 60L));
    }
}
