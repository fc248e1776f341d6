package org.steadwork.web;

import java.util.Locale;

/** The first letter of a text, large where a sentence begins with it and small within one. */
public final class Initial {

    private Initial() {
    }

    public static String large(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** An abbreviation, whose second letter is large too, stays as it is. */
    public static String small(String text) {
        boolean abbreviation = text.length() > 1 && Character.isUpperCase(text.charAt(1));
        return text.isEmpty() || abbreviation ? text : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }
}
