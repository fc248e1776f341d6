package org.steadwork.caseload;

import java.util.Locale;
import java.util.OptionalDouble;
import org.steadwork.caseload.statistics.Limits;
import org.steadwork.caseload.statistics.Proportion;

/**
 * One cell: as the page shows it, and as the file holds it.
 *
 * @param quiet true for a cell that says why there is no number
 * @param plain what the file holds; empty for no number
 */
record Cell(String shown, String plain, boolean quiet) {

    static Cell words(String words) {
        return new Cell(words, words, false);
    }

    static Cell none(String why) {
        return new Cell(why, "", true);
    }

    static Cell count(long count) {
        return new Cell(grouped(count), String.valueOf(count), false);
    }

    /** A number with so many decimals on the page; the file has four more. NaN and infinity are told in words. */
    static Cell number(double value, int decimals) {
        if (Double.isNaN(value)) {
            return none("not defined");
        }
        if (Double.isInfinite(value)) {
            return new Cell(value > 0 ? "∞" : "−∞", value > 0 ? "Inf" : "-Inf", false);
        }
        return new Cell(minus(String.format(Locale.ROOT, "%." + decimals + "f", value)), String.format(Locale.ROOT, "%." + (decimals + 4) + "f", value), false);
    }

    /** A median: with a half where it lies between two whole numbers. */
    static Cell median(double value) {
        return number(value, value == Math.rint(value) ? 0 : 1);
    }

    static Cell number(OptionalDouble value, int decimals, String otherwise) {
        return value.isPresent() ? number(value.getAsDouble(), decimals) : none(otherwise);
    }

    /** A share in whole percent; no rate on fewer than so many. */
    static Cell share(Proportion share, int fewest) {
        return share.of() < fewest ? none("fewer than " + fewest) : new Cell(percent(share.value()) + " %", plain(share.value()), false);
    }

    static Cell limits(Proportion share, double confidence, int fewest) {
        if (share.of() < fewest) {
            return none("–");
        }
        Limits limits = share.wilson(confidence);
        return new Cell(percent(limits.low()) + " to " + percent(limits.high()) + " %", plain(limits.low()) + " to " + plain(limits.high()), false);
    }

    static Cell range(double low, double high, int decimals) {
        Cell from = number(low, decimals);
        Cell to = number(high, decimals);
        return new Cell(from.shown() + " to " + to.shown(), from.plain() + " to " + to.plain(), false);
    }

    static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f", share * 100);
    }

    static String grouped(long count) {
        return String.format(Locale.ROOT, "%,d", count).replace(",", "\u202f");
    }

    private static String plain(double share) {
        return String.format(Locale.ROOT, "%.4f", share);
    }

    private static String minus(String number) {
        return number.startsWith("-") ? "−" + number.substring(1) : number;
    }
}
