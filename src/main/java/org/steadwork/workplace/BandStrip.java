package org.steadwork.workplace;

import java.util.Locale;
import org.steadwork.workplace.fit.Criterion;

/**
 * Where the parts of a small drawing stand: a value on its bands, in a box of 192 × 24. In range is filled, near the edge
 * dashed, the value a block, what is not known about it a line through the block. Numbers are ready to print, in units of the box.
 */
record BandStrip(String nearX, String nearWidth, String okX, String okWidth, String markX, String errorFrom, String errorTo) {

    private static final double LEFT = 4;
    private static final double RIGHT = 188;
    private static final double MARK = 7;
    private static final double MARGIN = 0.1;
    private static final double PAST_AN_OPEN_END = 0.6;

    /**
     * @param value finite
     * @param giveOrTake 0 or more; 0 draws no line
     */
    static BandStrip of(double value, double giveOrTake, Criterion.Bands bands) {
        Scale scale = Scale.around(value, giveOrTake, bands);
        String from = null;
        String to = null;
        if (giveOrTake > 0) {
            from = number(scale.x(value - giveOrTake));
            to = number(scale.x(value + giveOrTake));
        }
        return new BandStrip(number(scale.x(bands.amber().low())), number(scale.x(bands.amber().high()) - scale.x(bands.amber().low())),
                number(scale.x(bands.green().low())), number(scale.x(bands.green().high()) - scale.x(bands.green().low())),
                number(scale.x(value) - MARK / 2), from, to);
    }

    private static String number(double x) {
        return String.format(Locale.ROOT, "%.1f", x);
    }

    /** What a unit of the value is on the strip; open ends of bands reach the end of the strip. */
    private record Scale(double low, double high) {

        static Scale around(double value, double giveOrTake, Criterion.Bands bands) {
            double low = value - giveOrTake;
            double high = value + giveOrTake;
            boolean open = false;
            for (double edge : new double[] {bands.green().low(), bands.green().high(), bands.amber().low(), bands.amber().high()}) {
                open |= Double.isInfinite(edge);
                low = Double.isInfinite(edge) ? low : Math.min(low, edge);
                high = Double.isInfinite(edge) ? high : Math.max(high, edge);
            }
            double past = open ? (high - low) * PAST_AN_OPEN_END : 0;
            low -= Double.isInfinite(bands.green().low()) ? past : 0;
            high += Double.isInfinite(bands.green().high()) ? past : 0;
            double margin = Math.max(1e-6, (high - low) * MARGIN);
            return new Scale(low - margin, high + margin);
        }

        double x(double value) {
            double kept = Math.min(high, Math.max(low, value));
            return LEFT + (kept - low) / (high - low) * (RIGHT - LEFT);
        }
    }
}
