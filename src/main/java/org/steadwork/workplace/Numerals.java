package org.steadwork.workplace;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How numbers are written: a thin space between thousands, a true minus, a no-break space before the unit. */
final class Numerals {

    private static final char THIN = '\u202f';
    private static final String GAP = "\u00a0";
    private static final char MINUS = '\u2212';

    private Numerals() {
    }

    /** Writes a number rounded to {@code places} decimals, halves away from zero. */
    static String number(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
        String digits = rounded.abs().toPlainString();
        int point = digits.indexOf('.') < 0 ? digits.length() : digits.indexOf('.');
        String grouped = point > 3 ? digits.substring(0, point - 3) + THIN + digits.substring(point - 3) : digits;
        return rounded.signum() < 0 ? MINUS + grouped : grouped;
    }

    /** Writes a number with its sign, nought without. */
    static String signed(double value, int places) {
        String number = number(value, places);
        return number.equals("0") || number.charAt(0) == MINUS ? number : "+" + number;
    }

    static String mm(double value) {
        return number(value, 0) + GAP + "mm";
    }

    static String signedMm(double value) {
        return signed(value, 0) + GAP + "mm";
    }

    /** Writes a setting to the nearest 5 mm, as nobody sets a desk closer than that. */
    static String setting(double value) {
        return mm(5 * Math.rint(value / 5));
    }

    /** Writes from where to where a setting lies, to the nearest 5 mm. */
    static String settings(double low, double high) {
        return number(5 * Math.rint(low / 5), 0) + " to " + setting(high);
    }

    /** Writes a size of something to ask for, up to the next 5 mm. */
    static String sizeUp(double value) {
        return mm(5 * Math.ceil(value / 5 - 1e-9));
    }

    static String with(double value, String unit) {
        int places = unit.equals("mm") || unit.equals("lx") || unit.equals("min") ? 0 : 1;
        return number(value, places) + (unit.equals("°") || unit.equals("′") ? "" : GAP) + unit;
    }

    static String signedWith(double value, String unit) {
        int places = unit.equals("mm") || unit.equals("lx") || unit.equals("min") ? 0 : 1;
        return signed(value, places);
    }
}
