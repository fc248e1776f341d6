package org.steadwork.workplace.fit;

/**
 * A closed band [low, high] in the unit of what it judges; an open side is infinite.
 *
 * @param low at most {@code high}; −∞ when open below
 * @param high +∞ when open above
 */
public record Band(double low, double high) {

    private static final double HAIR = 1e-6;

    public Band {
        if (!(low <= high)) {
            throw new IllegalArgumentException("A band runs from its lower to its higher edge, but was " + low + " to " + high);
        }
    }

    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    /** Tells whether a value lies outside by more than a rounding error; one that is not known (NaN) does not. */
    boolean misses(double value) {
        return value < low - HAIR || value > high + HAIR;
    }

    /** Returns how far a value lies outside, 0 inside; NaN is refused. */
    public double outside(double value) {
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException("No value to compare with the band " + low + " to " + high);
        }
        return Math.max(0, Math.max(low - value, value - high));
    }

    /** Returns the value of the band that is nearest to the given one. */
    public double clip(double value) {
        return Math.min(high, Math.max(low, value));
    }

    public boolean encloses(Band inner) {
        return low <= inner.low && inner.high <= high;
    }
}
