package org.steadwork.outcome.scoring;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes numbers for the working: a true minus, no trailing zeros, at most two decimals, half up. */
final class Plain {

    private static final double MOST_WHOLE = 1e15;

    private Plain() {
    }

    static String number(double value) {
        if (value == Math.rint(value) && Math.abs(value) < MOST_WHOLE) {
            return Long.toString((long) value).replace('-', '\u2212');
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        String text = rounded.signum() == 0 ? "0" : rounded.toPlainString();
        return text.replace('-', '\u2212');
    }

    static String signed(double value) {
        String text = number(value);
        return text.startsWith("\u2212") || text.equals("0") ? text : "+" + text;
    }
}
