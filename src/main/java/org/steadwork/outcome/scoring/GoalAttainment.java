package org.steadwork.outcome.scoring;

import java.util.List;

/**
 * The T-score of a person's goals, each from −2 (much less than expected) over 0 (as expected) to +2.
 *
 * <p>T = 50 + 10 × Σ(w x) ÷ √((1 − ρ) Σw² + ρ (Σw)²) with ρ = 0.3; not rounded. No accepted measurement error or important
 * amount exists, so a change of T is shown and not judged.
 * Source: Kiresuk and Sherman 1968. (The formulas printed in the 2009 practical guide were corrected by an erratum.)
 */
public final class GoalAttainment {

    private static final double EXPECTED_CORRELATION = 0.3;

    private GoalAttainment() {
    }

    /**
     * Computes T.
     *
     * @param attainments −2 to 2 for each goal, null for one not rated: it is left out with its weight
     * @param weights above 0, one a goal
     */
    public static double tScore(List<Integer> attainments, List<Integer> weights) {
        if (attainments.size() != weights.size()) {
            throw new IllegalArgumentException("There are " + attainments.size() + " goals, but " + weights.size() + " weights");
        }
        double weighted = 0;
        double squares = 0;
        double sum = 0;
        for (int i = 0; i < attainments.size(); i++) {
            Integer attained = attainments.get(i);
            if (attained == null) {
                continue;
            }
            int weight = weights.get(i);
            if (attained < -2 || attained > 2 || weight < 1) {
                throw new IllegalArgumentException("Goal " + (i + 1) + " must be rated from \u22122 to 2 with a weight of at least 1, but has "
                        + attained + " and " + weight);
            }
            weighted += (double) weight * attained;
            squares += (double) weight * weight;
            sum += weight;
        }
        if (sum == 0) {
            throw new IllegalArgumentException("No goal is rated");
        }
        return 50 + 10 * weighted / Math.sqrt((1 - EXPECTED_CORRELATION) * squares + EXPECTED_CORRELATION * sum * sum);
    }
}
