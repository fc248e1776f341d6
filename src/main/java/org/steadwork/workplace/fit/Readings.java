package org.steadwork.workplace.fit;

import java.util.Arrays;

/**
 * Repeated readings of one measure. The value is their median; its standard error comes from how far they lie apart, and is
 * never less than careful reading leaves. Lengths in mm.
 */
public final class Readings {

    /** Mean range of n normal readings in standard deviations (d2), and the standard error of their median in the same. */
    private static final double[] RANGE = {1.128, 1.693, 2.059, 2.326};
    private static final double[] MEDIAN = {0.7071, 0.6698, 0.5461, 0.5356};

    private Readings() {
    }

    /**
     * Returns the median of 2 to 5 readings as measured, or the one reading there is.
     * Standard error = m(n) · max(range ÷ d2(n), careful), with m(n) that of the median of n normal readings.
     *
     * @param carefulError standard error of one careful reading, 0 or more
     * @throws IllegalArgumentException for no reading or more than 5, or one that is not a number
     * Source: d2, Shewhart's control chart constants; variance of the median of 3 normal readings 0.4487 σ² and of the others,
     *     order statistics of the normal distribution (checked by simulation in the tests).
     */
    public static Measurement of(double carefulError, double... readings) {
        if (readings.length < 1 || readings.length > 5 || !(carefulError >= 0)) {
            throw new IllegalArgumentException("A measure is read 1 to 5 times, but there were " + readings.length + " readings");
        }
        double[] sorted = readings.clone();
        Arrays.sort(sorted);
        double median = Spread.percentile(sorted, 0.5);
        if (sorted.length == 1) {
            return Measurement.measured(median, carefulError);
        }
        double range = sorted[sorted.length - 1] - sorted[0];
        int n = sorted.length - 2;
        return Measurement.measured(median, MEDIAN[n] * Math.max(range / RANGE[n], carefulError));
    }
}
