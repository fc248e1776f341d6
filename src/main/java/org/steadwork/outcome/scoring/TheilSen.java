package org.steadwork.outcome.scoring;

import java.util.Arrays;

/**
 * A trend through few points that one odd visit does not bend: the median of the slopes of all pairs of points.
 *
 * @param slope change in score for one unit of time
 * @param intercept median of (score − slope × time): the convention used here
 * @param otherIntercept median score − slope × median time: the other convention in use
 * @param tauB Kendall's rank correlation with ties, in [−1, 1]; NaN when all scores are equal
 * @param points how many points it rests on
 * Source: Theil 1950; Sen 1968; Kendall 1945 for tau-b.
 */
public record TheilSen(double slope, double intercept, double otherIntercept, double tauB, int points) {

    /** Fewest points for a line: design rule of ours. */
    public static final int FEWEST_POINTS = 3;

    /** Under five points no trend can be called significant: the smallest two-sided p of Kendall's test is 0.083 with four. */
    public static final int FEWEST_FOR_SIGNIFICANCE = 5;

    /** Fits times and scores of equal number, at least three, with at least two different times. */
    public static TheilSen of(double[] times, double[] scores) {
        int n = times.length;
        if (scores.length != n || n < FEWEST_POINTS) {
            throw new IllegalArgumentException("A trend needs at least three points, but there are " + n + " times and " + scores.length + " scores");
        }
        double[] slopes = new double[n * (n - 1) / 2];
        int pairs = 0;
        int concordance = 0;
        int untiedTimes = 0;
        int untiedScores = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                double run = times[j] - times[i];
                double rise = scores[j] - scores[i];
                concordance += (int) (Math.signum(run) * Math.signum(rise));
                untiedTimes += run == 0 ? 0 : 1;
                untiedScores += rise == 0 ? 0 : 1;
                if (run != 0) {
                    slopes[pairs++] = rise / run;
                }
            }
        }
        if (pairs == 0) {
            throw new IllegalArgumentException("A trend needs at least two different times");
        }
        double slope = median(Arrays.copyOf(slopes, pairs));
        double[] rests = new double[n];
        for (int i = 0; i < n; i++) {
            rests[i] = scores[i] - slope * times[i];
        }
        double tau = concordance / Math.sqrt((double) untiedTimes * untiedScores);
        return new TheilSen(slope, median(rests), median(scores.clone()) - slope * median(times.clone()), tau, n);
    }

    /** Returns the score of the line at a time. */
    public double at(double time) {
        return intercept + slope * time;
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        int half = values.length / 2;
        return values.length % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
    }
}
