package org.steadwork.workplace.fit;

/** What is said of a criterion. What was not looked at stays unknown. */
public enum Verdict {
    IN_RANGE, NEAR_THE_EDGE, OUT_OF_RANGE, NOT_LOOKED_AT;

    /** Tells whether something was found to be off, near the edge or beyond it. */
    public boolean isOff() {
        return this == NEAR_THE_EDGE || this == OUT_OF_RANGE;
    }

    /** Judges a value on its bands; NaN was not looked at. */
    public static Verdict of(double value, Band green, Band amber) {
        if (Double.isNaN(value)) {
            return NOT_LOOKED_AT;
        }
        if (green.contains(value)) {
            return IN_RANGE;
        }
        return amber.contains(value) ? NEAR_THE_EDGE : OUT_OF_RANGE;
    }
}
