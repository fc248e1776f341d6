package org.steadwork.caseload.statistics;

import java.util.Arrays;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * How far a group's scores moved, in the measure's own points and in standard deviations. Figures of a group: they say nothing about one
 * patient, and without a comparison group they are not effects of treatment.
 *
 * @param people how many pairs of scores, at least 2
 * @param meanImprovement mean of the improvements in points, + for better
 * @param sdBaseline standard deviation (n − 1) of the first scores, in points
 * @param sdChange standard deviation (n − 1) of the improvements, in points
 */
public record GroupChange(int people, double meanImprovement, double sdBaseline, double sdChange) {

    /**
     * Computes the figures of pairs of scores.
     *
     * @param baseline first scores, at least two, all finite; else {@link IllegalArgumentException}
     * @param later scores of the same people in the same order
     * @param lowerIsBetter true where a fall is an improvement
     */
    public static GroupChange of(double[] baseline, double[] later, boolean lowerIsBetter) {
        int n = baseline.length;
        if (later.length != n || n < 2) {
            throw new IllegalArgumentException("Group change needs at least two pairs of scores, but there are " + n + " and " + later.length);
        }
        double[] improvements = new double[n];
        for (int i = 0; i < n; i++) {
            improvements[i] = lowerIsBetter ? baseline[i] - later[i] : later[i] - baseline[i];
            if (!(Math.abs(improvements[i]) < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("Scores must be finite, but a pair was " + baseline[i] + " and " + later[i]);
            }
        }
        return new GroupChange(n, mean(improvements), standardDeviation(baseline), standardDeviation(improvements));
    }

    /**
     * Returns the effect size, Cohen's d of a change: mean improvement by the spread of first scores. NaN or infinite without spread.
     * Source: Kazis 1989, Med Care 27:S178 (from memory).
     */
    public double effectSize() {
        return meanImprovement / sdBaseline;
    }

    /**
     * Returns the standardised response mean: mean improvement by the spread of the improvements. NaN or infinite without spread.
     * Source: Liang 1990, Med Care 28:632 (from memory).
     */
    public double standardisedResponseMean() {
        return meanImprovement / sdChange;
    }

    /** Returns Student's t of the paired scores, with people − 1 degrees of freedom. */
    public double pairedT() {
        return standardisedResponseMean() * Math.sqrt(people);
    }

    /** Returns the two-sided p value of {@link #pairedT()}, in [0, 1]; NaN when nobody changed. */
    public double p() {
        double t = pairedT();
        return Double.isNaN(t) ? Double.NaN : 2 * new TDistribution(null, people - 1).cumulativeProbability(-Math.abs(t));
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).sum() / values.length;
    }

    private static double standardDeviation(double[] values) {
        double mean = mean(values);
        return Math.sqrt(Arrays.stream(values).map(value -> (value - mean) * (value - mean)).sum() / (values.length - 1));
    }
}
