package org.steadwork.exercise;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of the day as minutes after midnight, read and written as {@code 08:30}. */
final class ClockTime {

    private static final Pattern WRITTEN = Pattern.compile("([01]?\\d|2[0-3])[:.]([0-5]\\d)|(24)[:.]00");

    private ClockTime() {
    }

    /** Returns the minutes after midnight, [0, 1440], or null when the text is no time of the day. */
    static Integer parse(String text) {
        Matcher parts = WRITTEN.matcher(text.strip());
        if (!parts.matches()) {
            return null;
        }
        return parts.group(3) != null ? 24 * 60 : Integer.parseInt(parts.group(1)) * 60 + Integer.parseInt(parts.group(2));
    }

    static String shown(int minutes) {
        return "%02d:%02d".formatted(minutes / 60, minutes % 60);
    }
}
