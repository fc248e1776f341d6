package org.steadwork.caseload.statistics;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.special.Gamma;

/** Turns a confidence into the number of standard errors it needs, and chi-square into a p value. */
final class Confidence {

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private Confidence() {
    }

    /** Returns how many standard errors lie on each side of an estimate: 1.959964 for 0.95. The confidence lies in (0, 1). */
    static double standardErrors(double confidence) {
        return NORMAL.inverseCumulativeProbability(1 - tail(confidence));
    }

    /** Returns what is left on each side: 0.025 for 0.95. */
    static double tail(double confidence) {
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("A confidence must lie between 0 and 1, for example 0.95, but was " + confidence);
        }
        return (1 - confidence) / 2;
    }

    /** Returns the chance of at least this chi-square with one degree of freedom; exact in the far tail, where 1 − p would lose digits. */
    static double upperTailOfChiSquare(double chiSquare) {
        return Gamma.regularizedGammaQ(0.5, chiSquare / 2);
    }
}
