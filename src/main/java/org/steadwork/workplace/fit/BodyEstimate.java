package org.steadwork.workplace.fit;

/**
 * A body dimension estimated from stature, in mm, not rounded. It holds for people like those of the survey; another
 * population may lie 15 to 40 mm off. Not for ordering equipment: measure.
 *
 * @param halfWidth95 half the width of the 95 % prediction interval
 * @param predictionError standard error of one person's value about the estimate
 * @param standardError standard error of the equation (residual SD)
 */
public record BodyEstimate(BodyDimension dimension, double value, double halfWidth95, double predictionError, double standardError) {

    /** How many standard errors, and how many mm for another population, a typed value may be off before it is asked again. */
    private static final double ERRORS = 2.6;
    private static final double OTHER_PEOPLE_MM = 30;

    public double low() {
        return value - halfWidth95;
    }

    public double high() {
        return value + halfWidth95;
    }

    /**
     * Returns the band in which a typed value needs no second look: estimate ± (2.6 SEE + 30 mm).
     * Source: our choice; 30 mm covers the shifts between surveys at equal stature.
     */
    public Band plausible() {
        double off = ERRORS * standardError + OTHER_PEOPLE_MM;
        return new Band(value - off, value + off);
    }
}
