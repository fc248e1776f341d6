package org.steadwork.workplace.fit;

/**
 * How far a part can be set: every {@code step} mm from {@code low} to {@code high}; a fixed part has equal ends.
 *
 * @param low lowest setting, finite
 * @param high highest setting, at least {@code low}
 * @param step distance between settings, more than 0
 */
public record Travel(double low, double high, double step) {

    private static final double HAIR = 1e-9;

    public Travel {
        if (!(low <= high && Math.abs(low) < 10_000 && Math.abs(high) < 10_000)) {
            throw new IllegalArgumentException("A range runs from its lowest to its highest setting, but was " + low + " to " + high + " mm");
        }
        if (!(step > 0 && step < 10_000)) {
            throw new IllegalArgumentException("A step must be more than 0 mm, but was " + step);
        }
    }

    public static Travel of(double low, double high) {
        return new Travel(low, high, 1);
    }

    public static Travel fixed(double at) {
        return new Travel(at, at, 1);
    }

    public boolean isFixed() {
        return low == high;
    }

    public double clip(double wanted) {
        return Math.min(high, Math.max(low, wanted));
    }

    /** Returns the highest setting that is not above the wanted one, or the lowest there is. */
    public double atOrBelow(double wanted) {
        return setting(index(wanted));
    }

    /** Returns the lowest setting that is not below the wanted one, or the highest there is. */
    public double atOrAbove(double wanted) {
        double up = low + step * Math.ceil((clip(wanted) - low) / step - HAIR);
        return up > high + HAIR ? atOrBelow(high) : up;
    }

    /** Returns how many settings there are. */
    public int settings() {
        return 1 + (int) Math.floor((high - low) / step + HAIR);
    }

    /** Returns the place of the highest setting that is not above the wanted one, or of the lowest there is. */
    int index(double wanted) {
        return (int) Math.floor((clip(wanted) - low) / step + HAIR);
    }

    public double setting(int index) {
        return low + index * step;
    }

    /** Tells whether a value is one of the settings. */
    public boolean offers(double value) {
        return value >= low - HAIR && value <= high + HAIR && Math.abs(atOrBelow(value + HAIR) - value) < 1e-6;
    }
}
