package org.steadwork.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Measures text without a font, on the wide side, so that labels fit whatever system font is used.
 * Source of the advance widths (thousandths of the size): Adobe core font metrics, Helvetica.
 */
public final class TextWidth {

    private static final int[] LOWER = {556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333,
        500, 278, 556, 500, 722, 500, 500, 500};
    private static final int[] UPPER = {667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722,
        667, 611, 722, 667, 944, 667, 667, 611};
    private static final double SAFETY = 1.14;
    private static final double SAFETY_BOLD = 1.32;

    /** A space, but not the one between a number and its unit. */
    private static final Pattern BREAK = Pattern.compile("(?<!\\d)\\s+|\\s+(?!(?:mm|cm|kg|min|h|%)(?:[\\s.,;:)]|$))");

    private TextWidth() {
    }

    public static double of(String text, double size, boolean bold) {
        return text.chars().mapToDouble(TextWidth::advance).sum() * size / 1000 * (bold ? SAFETY_BOLD : SAFETY);
    }

    private static double advance(int c) {
        if (c >= 'a' && c <= 'z') {
            return LOWER[c - 'a'];
        }
        if (c >= 'A' && c <= 'Z') {
            return UPPER[c - 'A'];
        }
        if (c >= '0' && c <= '9') {
            return 556;
        }
        return switch (c) {
            case ' ', '!', ',', '.', '/', ':', ';', '·' -> 278;
            case '"' -> 355;
            case '\'' -> 191;
            case '(', ')', '-' -> 333;
            case '*' -> 389;
            case '°' -> 400;
            case '+', '=', '−' -> 584;
            case '→' -> 1000;
            default -> 600;
        };
    }

    /** Breaks a text into lines no wider than given; a single longer word keeps its line. */
    public static List<String> wrap(String text, double size, double width, boolean bold) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : BREAK.split(text.strip())) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && of(longer, size, bold) > width) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }
}
