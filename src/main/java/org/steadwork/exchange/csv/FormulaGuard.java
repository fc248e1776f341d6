package org.steadwork.exchange.csv;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from taking a text for a formula: what begins with = + - @, a tab or a line end gets an apostrophe before it. Reading
 * takes the apostrophe away again, so that what went out comes back as it was. Source: OWASP, CSV Injection.
 */
final class FormulaGuard {

    private static final Pattern RISKY = Pattern.compile("^'*[=+\\-@\\t\\r\\n].*", Pattern.DOTALL);
    private static final Pattern GUARDED = Pattern.compile("^'+[=+\\-@\\t\\r\\n].*", Pattern.DOTALL);

    private FormulaGuard() {
    }

    /** Returns the text as it may stand in a file; a null is an empty cell. */
    static String guarded(String text) {
        return text == null ? "" : RISKY.matcher(text).matches() ? "'" + text : text;
    }

    static String plain(String cell) {
        return GUARDED.matcher(cell).matches() ? cell.substring(1) : cell;
    }
}
