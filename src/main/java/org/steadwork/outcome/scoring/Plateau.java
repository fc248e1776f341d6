package org.steadwork.outcome.scoring;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Whether a course of scores has come to a standstill: a prompt to think, never a reason to close a case. The rule is ours
 * and has no published source.
 *
 * @param reached true when it has
 * @param alerts true when it may reach the review meeting: the last three scores also lie closer together than an amount that is not
 *        from memory
 */
public record Plateau(boolean reached, boolean alerts) {

    private static final double WEEKS_NEEDED = 4;
    private static final int SCORES = 3;
    private static final Plateau NONE = new Plateau(false, false);

    /**
     * Applies the rule with the published amounts that count in a region at the first score.
     *
     * @param weeksToNextReview above 0
     */
    public static Plateau of(Series series, String region, double weeksToNextReview, boolean goalsMet) {
        if (series.points().size() < SCORES) {
            return NONE;
        }
        Thresholds amounts = series.instrument().amounts();
        double baseline = series.first().value();
        return of(series, amounts.counting(Threshold.Kind.ERROR, region, baseline), amounts.counting(Threshold.Kind.IMPORTANCE, region, baseline),
                weeksToNextReview, goalsMet);
    }

    static Plateau of(Series series, Thresholds.Counting errors, Thresholds.Counting importances, double weeksToNextReview, boolean goalsMet) {
        if (series.points().size() < SCORES) {
            return NONE;
        }
        double baseline = series.first().value();
        double[] scores = series.values();
        boolean reached = reached(series.weeks(), scores, series.instrument().direction(), points(errors, baseline), points(importances, baseline),
                weeksToNextReview, goalsMet);
        double range = rangeOfLast(scores);
        boolean alerts = reached && Stream.concat(errors.range().stream(), importances.range().stream())
                .anyMatch(threshold -> !threshold.fromMemory() && range < threshold.points(baseline));
        return new Plateau(reached, alerts);
    }

    /**
     * True when there are at least three scores over at least four weeks, the last three lie closer together than the error, the
     * gain to be expected by the next review (slope of the last three) is under half the important amount, and goals are not met.
     *
     * @param weeks times of the scores in weeks, rising
     * @param error amount above 0; empty gives false, because nothing can then be said
     * @param weeksToNextReview above 0
     */
    public static boolean reached(double[] weeks, double[] scores, Direction direction, OptionalDouble error, OptionalDouble importance,
            double weeksToNextReview, boolean goalsMet) {
        int n = scores.length;
        if (goalsMet || error.isEmpty() || importance.isEmpty() || n < SCORES || !(weeks[n - 1] - weeks[0] >= WEEKS_NEEDED)) {
            return false;
        }
        double slope = TheilSen.of(Arrays.copyOfRange(weeks, n - SCORES, n), Arrays.copyOfRange(scores, n - SCORES, n)).slope();
        double gain = direction.improvement(0, slope * weeksToNextReview);
        return rangeOfLast(scores) < error.getAsDouble() && gain < importance.getAsDouble() / 2;
    }

    private static double rangeOfLast(double[] scores) {
        double[] last = Arrays.copyOfRange(scores, scores.length - SCORES, scores.length);
        return Arrays.stream(last).max().getAsDouble() - Arrays.stream(last).min().getAsDouble();
    }

    private static OptionalDouble points(Thresholds.Counting amounts, double baseline) {
        return amounts.leading().map(threshold -> OptionalDouble.of(threshold.points(baseline)))
                .orElse(OptionalDouble.empty());
    }
}
