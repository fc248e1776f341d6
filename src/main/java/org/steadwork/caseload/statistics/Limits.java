package org.steadwork.caseload.statistics;

/**
 * The lower and the upper limit of an interval that covers the true value with a stated confidence.
 *
 * @param low lower limit, at most the upper one; may be negative infinity
 * @param high upper limit; may be infinity
 */
public record Limits(double low, double high) {

    /** The confidence shown throughout: 95 %. */
    public static final double USUAL_CONFIDENCE = 0.95;

    public Limits {
        if (!(low <= high)) {
            throw new IllegalArgumentException("The lower limit must not lie above the upper one, but they were " + low + " and " + high);
        }
    }
}
