package org.steadwork.exercise.dayplan;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number or a range of numbers as doses are written: {@code 3}, {@code 10-15}, {@code 0.5-1}. Both ends belong to it.
 *
 * @param low  in [0, 10 000]
 * @param high from low to 10 000; the same as low for a single number
 */
public record Range(double low, double high) {

    private static final double MOST = 10_000;
    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,5}(?:[.,]\\d{1,2})?)(?:\\s*(?:-|–|to)\\s*(\\d{1,5}(?:[.,]\\d{1,2})?))?");

    public Range {
        if (!(low >= 0 && low <= high && high <= MOST)) {
            throw new IllegalArgumentException("A range runs upward from 0 to " + plain(MOST) + ", but was " + low + " to " + high);
        }
    }

    public static Range of(double single) {
        return new Range(single, single);
    }

    public static Range of(double low, double high) {
        return new Range(low, high);
    }

    /** Reads {@code 3}, {@code 10-15}, {@code 10 to 15} or {@code 0,5-1}; anything else, and a range that runs down, is an {@link IllegalArgumentException}. */
    public static Range parse(String text) {
        Matcher parts = WRITTEN.matcher(text.strip());
        if (!parts.matches()) {
            throw new IllegalArgumentException("A number or a range such as 10-15 is needed, but was '" + text + "'");
        }
        double low = Double.parseDouble(parts.group(1).replace(',', '.'));
        return new Range(low, parts.group(2) == null ? low : Double.parseDouble(parts.group(2).replace(',', '.')));
    }

    public boolean isSingle() {
        return low == high;
    }

    public double middle() {
        return (low + high) / 2;
    }

    public boolean isWithin(double least, double most) {
        return low >= least && high <= most;
    }

    public boolean isWhole() {
        return low == Math.rint(low) && high == Math.rint(high);
    }

    /** The form that {@link #parse} reads back. */
    @Override
    public String toString() {
        return isSingle() ? plain(low) : plain(low) + "-" + plain(high);
    }

    /** The form shown to people: {@code 10 to 15}. */
    public String shown() {
        return isSingle() ? plain(low) : plain(low) + " to " + plain(high);
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
