package org.steadwork.caseload.statistics;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Two yes-or-no facts about the same people in four counts, and how firmly the two go together. Says nothing about cause.
 *
 * @param both with the finding and the complaint; each count 0 or more, at least one above 0, else {@link IllegalArgumentException}
 * @param findingOnly with the finding, without the complaint
 * @param complaintOnly with the complaint, without the finding
 * @param neither with neither
 */
public record FourfoldTable(int both, int findingOnly, int complaintOnly, int neither) {

    // R's fisher.test counts tables as likely as the observed one up to this factor as no likelier
    private static final double AS_LIKELY = 1 + 1e-7;
    private static final double PRECISION = 1e-13;
    private static final double NEGLIGIBLE = 1e-20;
    private static final int MOST_STEPS = 1000;

    public FourfoldTable {
        if (both < 0 || findingOnly < 0 || complaintOnly < 0 || neither < 0 || (long) both + findingOnly + complaintOnly + neither < 1) {
            throw new IllegalArgumentException("Counts must be 0 or more and not all 0, but were "
                    + both + ", " + findingOnly + ", " + complaintOnly + ", " + neither);
        }
    }

    /** Returns the odds ratio as counted: 0, infinity, or NaN when the counts leave it open. Not the conditional estimate of {@link #oddsRatio()}. */
    public double countedOddsRatio() {
        return (double) both * neither / ((double) findingOnly * complaintOnly);
    }

    /**
     * Returns the chance, in (0, 1], of a table no likelier than this one when nothing ties the two facts: Fisher's two-sided test.
     * Source: the definition of R's {@code fisher.test}.
     */
    public double p() {
        // walked so far that what is as unlikely as the count seen is counted, however unlikely that is
        CountChances untied = chances(0, Double.MIN_NORMAL);
        return Math.max(Double.MIN_VALUE, untied.ofNoMoreThan(untied.at(both) * AS_LIKELY));
    }

    /** Returns the chance, in (0, 1], of at least so many with both when nothing ties the two facts: the one-sided test. */
    public double pOfAtLeast() {
        return Math.max(Double.MIN_VALUE, chances(0, Double.MIN_NORMAL).atLeast(both));
    }

    /**
     * Returns the conditional maximum-likelihood odds ratio: the one under which the expected count with both is the one seen. From 0 to
     * infinity; NaN when the margins allow no other table.
     */
    public double oddsRatio() {
        if (least() == most()) {
            return Double.NaN;
        }
        if (both == least()) {
            return 0;
        }
        return both == most() ? Double.POSITIVE_INFINITY : Math.exp(solve(logOdds -> chances(logOdds, NEGLIGIBLE).mean() - both));
    }

    /**
     * Returns exact limits of the odds ratio, half the doubt on each side; from 0 to infinity.
     *
     * @param confidence in (0, 1), usually 0.95
     * Source: exact conditional limits as R's {@code fisher.test} gives them.
     */
    public Limits oddsRatioLimits(double confidence) {
        double tail = Confidence.tail(confidence);
        return new Limits(lowerBound(1 - tail), upperBound(1 - tail));
    }

    /** Returns the odds ratio that the true one exceeds with the confidence, in (0, 1): a one-sided bound, 0 or more. */
    public double lowerBound(double confidence) {
        return both == least() ? 0 : Math.exp(solve(logOdds -> atLeast(logOdds) - (1 - confidence)));
    }

    private double upperBound(double confidence) {
        return both == most() ? Double.POSITIVE_INFINITY : Math.exp(solve(logOdds -> (1 - confidence) - atMost(logOdds)));
    }

    private int least() {
        return Math.max(0, both - neither);
    }

    private int most() {
        return both + Math.min(findingOnly, complaintOnly);
    }

    private double atLeast(double logOdds) {
        return chances(logOdds, NEGLIGIBLE).atLeast(both);
    }

    private double atMost(double logOdds) {
        return chances(logOdds, NEGLIGIBLE).atMost(both);
    }

    private CountChances chances(double logOdds, double floor) {
        return CountChances.of(least(), most(), both + findingOnly, both + complaintOnly, neither - both, Math.exp(logOdds), floor);
    }

    /** Finds where a rising function of the log odds ratio crosses 0. */
    private static double solve(DoubleUnaryOperator rising) {
        double reach = 1;
        while (!(rising.applyAsDouble(-reach) <= 0 && rising.applyAsDouble(reach) >= 0)) {
            reach *= 2;
        }
        return new BrentSolver(PRECISION, PRECISION).solve(MOST_STEPS, rising::applyAsDouble, -reach, reach);
    }
}
