package org.steadwork.workplace.fit;

/**
 * One value with the way it was obtained and its standard error, both in the unit of what is measured (mm for lengths).
 *
 * @param value finite; NaN only when {@code how} is {@link How#NOT_LOOKED_AT}
 * @param standardError one standard deviation of the error, in [0, ∞); 0 means taken as exact
 */
public record Measurement(double value, How how, double standardError) {

    /** Half the width of a 95 % interval, in standard errors, of a normal error. */
    public static final double NORMAL_975 = 1.959964;

    private static final Measurement NOT_LOOKED_AT = new Measurement(Double.NaN, How.NOT_LOOKED_AT, 0);

    public Measurement {
        boolean absent = how == How.NOT_LOOKED_AT;
        if (how == null || absent != Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("A value that was looked at must be a finite number, but was " + value);
        }
        if (!(standardError >= 0 && standardError < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("A standard error must be 0 or more, but was " + standardError);
        }
    }

    public static Measurement measured(double value, double standardError) {
        return new Measurement(value, How.MEASURED, standardError);
    }

    public static Measurement estimated(double value, double standardError) {
        return new Measurement(value, How.ESTIMATED, standardError);
    }

    public static Measurement notLookedAt() {
        return NOT_LOOKED_AT;
    }

    public boolean known() {
        return how != How.NOT_LOOKED_AT;
    }

    /** Returns half the width of the 95 % interval, in the value's unit, not rounded. */
    public double giveOrTake() {
        return NORMAL_975 * standardError;
    }

    /** Returns the same measurement shifted by a known amount, its error unchanged. */
    public Measurement plus(double shift) {
        return known() ? new Measurement(value + shift, how, standardError) : this;
    }
}
