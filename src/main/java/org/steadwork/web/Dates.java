package org.steadwork.web;

import io.quarkus.qute.TemplateExtension;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;

/** How dates are written and read: {@code 25 Nov 2026} on screen, {@code 25 November 2026} in a letter. */
@TemplateExtension
public final class Dates {

    private static final DateTimeFormatter SCREEN = DateTimeFormatter.ofPattern("d\u00a0MMM\u00a0uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter LETTER = DateTimeFormatter.ofPattern("d\u00a0MMMM\u00a0uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE\u00a0d\u00a0MMM\u00a0uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d\u00a0MMM\u00a0uuuu, HH:mm", Locale.ENGLISH);
    private static final List<DateTimeFormatter> READABLE = List.of(pattern("uuuu-M-d"), pattern("d.M.uuuu"), pattern("d/M/uuuu"),
            pattern("d MMM uuuu"), pattern("d MMMM uuuu"));

    private Dates() {
    }

    /** Writes a date for the screen. */
    public static String shown(LocalDate date) {
        return SCREEN.format(date);
    }

    public static String shownWithDay(LocalDate date) {
        return DAY.format(date);
    }

    public static String inLetter(LocalDate date) {
        return LETTER.format(date);
    }

    public static String shown(LocalDateTime moment) {
        return MOMENT.format(moment);
    }

    public static String shown(Instant moment) {
        return MOMENT.format(moment.atZone(ZoneId.systemDefault()));
    }

    /** Reads a date in one of the forms people type, day before month. */
    public static LocalDate parse(String text) {
        String plain = text.replace('\u00a0', ' ').strip();
        for (DateTimeFormatter form : READABLE) {
            try {
                LocalDate date = LocalDate.parse(plain, form);
                if (date.getYear() >= 1890 && date.getYear() <= 2199) {
                    return date;
                }
            } catch (DateTimeException e) {
                // the next form may fit
            }
        }
        throw new DateTimeException("Not a date: " + plain);
    }

    private static DateTimeFormatter pattern(String pattern) {
        return new DateTimeFormatterBuilder().parseCaseInsensitive().appendPattern(pattern).toFormatter(Locale.ENGLISH)
                .withChronology(IsoChronology.INSTANCE).withResolverStyle(ResolverStyle.STRICT);
    }
}
