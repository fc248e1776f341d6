package org.steadwork.outcome;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.steadwork.outcome.scoring.Instrument;

/** Writes scores for people: rounded half up, with their unit, a true minus and no-break spaces. */
public final class Shown {

    private Shown() {
    }

    /** Returns how many decimals a score of the instrument is shown with: two on scales of up to five points, else one. */
    static int decimals(Instrument instrument) {
        return instrument.highest() - instrument.lowest() <= 5 ? 2 : 1;
    }

    /** Writes a score with its unit, for example 46 %. */
    public static String value(Instrument instrument, double value) {
        return withUnit(instrument, number(value, decimals(instrument)));
    }

    /** Writes a change with its sign, without a unit. */
    public static String change(Instrument instrument, double change) {
        String text = number(change, decimals(instrument));
        return text.startsWith("\u2212") || text.equals("0") ? text : "+" + text;
    }

    /** Writes an amount with as many decimals as it needs, at most two. */
    public static String amount(double amount) {
        return number(amount, 2);
    }

    static String withUnit(Instrument instrument, String number) {
        return instrument.unit().isEmpty() ? number : number + "\u00a0" + instrument.unit();
    }

    private static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        String text = rounded.signum() == 0 ? "0" : rounded.toPlainString();
        return text.replace('-', '\u2212');
    }
}
