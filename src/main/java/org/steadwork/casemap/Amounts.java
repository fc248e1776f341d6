package org.steadwork.casemap;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as the map shows them: at most one decimal, a true minus. */
final class Amounts {

    private Amounts() {
    }

    static String hours(double hours) {
        return number(hours) + "\u00a0h";
    }

    /** With its sign, nought without, and its unit, which a degree sign follows without a space. */
    static String signed(double value, String unit) {
        String number = number(value);
        return (number.equals("0") || number.startsWith("−") ? number : "+" + number) + (unit.equals("°") ? "" : "\u00a0") + unit;
    }

    private static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString().replace('-', '−');
    }
}
