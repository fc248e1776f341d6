package org.steadwork.outcome.scoring;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Whether a course of scores has come to a standstill: a prompt to think, never a reason to close a case. The rule is ours
 * and has no published source.
 */
public final class Plateau {

    private static final double WEEKS_NEEDED = 4;

    private Plateau() {
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
        if (goalsMet || error.isEmpty() || importance.isEmpty() || n < 3 || !(weeks[n - 1] - weeks[0] >= WEEKS_NEEDED)) {
            return false;
        }
        double[] last = Arrays.copyOfRange(scores, n - 3, n);
        double range = Arrays.stream(last).max().getAsDouble() - Arrays.stream(last).min().getAsDouble();
        double slope = TheilSen.of(Arrays.copyOfRange(weeks, n - 3, n), last).slope();
        double gain = direction.improvement(0, slope * weeksToNextReview);
        return range < error.getAsDouble() && gain < importance.getAsDouble() / 2;
    }
}
