package org.steadwork.caseload.statistics;

import java.util.Optional;

/** The scales on which limits of a Kaplan–Meier curve are in use; ours are log-log, the others are for comparison with publications. */
public enum CurveLimits {

    /** On the scale of ln(−ln S): within (0, 1) by itself, and best for small groups. */
    LOG_LOG {
        @Override
        double at(double survival, double deviation) {
            return Math.pow(survival, Math.exp(deviation / Math.log(survival)));
        }
    },

    /** On the scale of ln S, cut at 1: the usual setting of R's survfit. */
    LOG {
        @Override
        double at(double survival, double deviation) {
            return Math.min(1, survival * Math.exp(deviation));
        }
    },

    /** On the scale of S, cut at 0 and 1: too narrow for small groups. */
    PLAIN {
        @Override
        double at(double survival, double deviation) {
            return Math.max(0, Math.min(1, survival * (1 + deviation)));
        }
    };

    /**
     * Returns the limits at one step of a curve; empty at S = 0 or 1, where none of the scales has them.
     *
     * @param survival S, in [0, 1]
     * @param greenwoodSum sum of d / (n (n − d)) over the steps so far, 0 or more
     * @param confidence in (0, 1)
     */
    Optional<Limits> of(double survival, double greenwoodSum, double confidence) {
        if (!(survival > 0 && survival < 1)) {
            return Optional.empty();
        }
        double deviation = Confidence.standardErrors(confidence) * Math.sqrt(greenwoodSum);
        return Optional.of(new Limits(at(survival, -deviation), at(survival, deviation)));
    }

    /** The limit that lies a number of relative standard errors below (negative) or above the curve. */
    abstract double at(double survival, double deviation);
}
