package org.steadwork.workplace.fit;

import java.util.Arrays;

/**
 * A value and where it lies in 95 of 100 draws of the body, in the unit of the value, not rounded.
 *
 * @param value with the measures as they stand
 * @param low 2.5th percentile of the draws
 * @param high 97.5th percentile
 */
public record Spread(double value, double low, double high) {

    /** Sorts the draws. */
    static Spread of(double value, double[] draws) {
        Arrays.sort(draws);
        return new Spread(value, percentile(draws, 0.025), percentile(draws, 0.975));
    }

    /** Interpolates between neighbours, as R does by default (type 7; Hyndman and Fan 1996). */
    static double percentile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    /** Returns half the width of the interval. */
    public double giveOrTake() {
        return (high - low) / 2;
    }
}
