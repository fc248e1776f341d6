package org.steadwork.workplace.fit;

/**
 * One linear equation of a body dimension on stature, or on stature and body mass, with what its prediction interval needs.
 *
 * @param withMass whether body mass is in it
 * @param slopeMass 0 without body mass
 * @param standardError standard error of the estimate (residual SD), in mm
 * @param t975 97.5 % point of Student's t for its degrees of freedom
 * @param inverse the symmetric matrix (X'X)⁻¹ as c00, c01, c02, c11, c12, c22; those with index 2 are 0 without mass
 * @param stature range of statures it was made from, in mm
 * @param mass range of body masses it was made from, in kg
 */
public record Regression(BodyGroup group, BodyDimension dimension, boolean withMass, double intercept, double slopeStature, double slopeMass,
        double standardError, double t975, Inverse inverse, Band stature, Band mass) {

    public Regression {
        if (!(standardError > 0 && t975 > 1.9 && t975 < 13)) {
            throw new IllegalArgumentException("An equation needs a standard error above 0 and a t value, but has " + standardError
                    + " and " + t975);
        }
    }

    /**
     * Estimates the dimension with its exact 95 % prediction interval, not rounded:
     * half-width = t975 · SEE · √(1 + x₀' (X'X)⁻¹ x₀), x₀ = (1, stature[, mass]).
     *
     * @param statureMm barefoot, within {@link #stature()}; outside the equation says nothing and the call is refused
     * @param massKg within {@link #mass()} when the equation has body mass; not read otherwise
     * Source: Gordon et al. 2014, NATICK/TR-15/007 (public individual data); ordinary least squares.
     */
    public BodyEstimate estimate(double statureMm, double massKg) {
        if (!stature.contains(statureMm)) {
            throw new OutsideSurvey("stature", statureMm, "mm", stature);
        }
        if (withMass && !mass.contains(massKg)) {
            throw new OutsideSurvey("body mass", massKg, "kg", mass);
        }
        double kilograms = withMass ? massKg : 0;
        double value = intercept + slopeStature * statureMm + slopeMass * kilograms;
        double predictionError = standardError * Math.sqrt(1 + inverse.form(statureMm, kilograms));
        return new BodyEstimate(dimension, value, t975 * predictionError, predictionError, standardError);
    }

    /** The matrix (X'X)⁻¹ of an equation. */
    public record Inverse(double c00, double c01, double c02, double c11, double c12, double c22) {

        double form(double x1, double x2) {
            return c00 + 2 * c01 * x1 + 2 * c02 * x2 + c11 * x1 * x1 + 2 * c12 * x1 * x2 + c22 * x2 * x2;
        }
    }
}
