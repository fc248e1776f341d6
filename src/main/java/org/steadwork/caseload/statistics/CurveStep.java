package org.steadwork.caseload.statistics;

import java.util.Optional;

/**
 * One time at which events came, and where the curve stands from then on.
 *
 * @param time in the unit of the cohort
 * @param atRisk how many were still followed just before, at least 1
 * @param events how many had the event then, in [1, atRisk]
 * @param survival S, the estimated share without the event after this time, in [0, 1]
 * @param greenwoodSum sum of d / (n (n − d)) up to here; infinite once S is 0
 */
public record CurveStep(double time, int atRisk, int events, double survival, double greenwoodSum) {

    /** Returns Greenwood's standard error of S; 0 where S is 0, as is usual, though nothing is certain there. */
    public double standardError() {
        return survival == 0 ? 0 : survival * Math.sqrt(greenwoodSum);
    }

    /** Returns limits of S with a confidence in (0, 1); empty where S is 0 or 1. */
    public Optional<Limits> limits(CurveLimits scale, double confidence) {
        return scale.of(survival, greenwoodSum, confidence);
    }
}
