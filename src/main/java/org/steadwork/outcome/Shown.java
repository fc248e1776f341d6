package org.steadwork.outcome;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.steadwork.outcome.scoring.Instrument;

/** Writes scores for people: rounded half up, with their unit, a true minus and no-break spaces. */
public final class Shown {

    private Shown() {
    }

    /** Writes a score with its unit, for example 46 %. */
    public static String value(Instrument instrument, double value) {
        return withUnit(instrument, number(instrument, value));
    }

    /** Writes a score without its unit. */
    static String number(Instrument instrument, double value) {
        return fixed(value, instrument.decimals());
    }

    /** Writes a change with its sign, without a unit. */
    public static String change(Instrument instrument, double change) {
        String text = fixed(change, instrument.decimals());
        return text.startsWith("\u2212") || text.matches("[0.]+") ? text : "+" + text;
    }

    /** Writes an amount with as many decimals as it needs, at most two. */
    public static String amount(double amount) {
        return number(amount, 2);
    }

    static String withUnit(Instrument instrument, String number) {
        return instrument.unit().isEmpty() ? number : number + "\u00a0" + instrument.unit();
    }

    // A whole-numbered scale shows one decimal where a value is not whole: hiding it would hide that it was computed.
    static String fixed(double value, int decimals) {
        if (decimals == 0) {
            return number(value, 1);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString().replace('-', '\u2212');
    }

    private static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        String text = rounded.signum() == 0 ? "0" : rounded.toPlainString();
        return text.replace('-', '\u2212');
    }
}
