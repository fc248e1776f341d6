package org.steadwork.exposure.method;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The strain index of 1995 for one hand in one task: the product of six multipliers.
 *
 * <p>For the distal upper limb. Not for neck, shoulder or back, vibration or contact stress; several tasks need another rule. Three of its
 * six inputs are judgement and the multipliers are the authors' opinion.
 * Source: Moore and Garg 1995, AIHA Journal 56:443-458.
 */
public final class StrainIndex {

    /** The six ratings, each from 1 to 5. */
    public enum Variable {
        INTENSITY, DURATION_OF_EXERTION, EFFORTS_PER_MINUTE, HAND_WRIST_POSTURE, SPEED_OF_WORK, DURATION_PER_DAY
    }

    /** The efforts multiplier of a static exertion (the whole cycle); from memory. */
    public static final double STATIC_EFFORTS = 3;

    private final Map<Variable, double[]> multipliers;

    /** @param multipliers for each variable its five multipliers, rating 1 first */
    public StrainIndex(Map<Variable, double[]> multipliers) {
        this.multipliers = new EnumMap<>(multipliers);
        for (Variable variable : Variable.values()) {
            if (!multipliers.containsKey(variable) || multipliers.get(variable).length != 5) {
                throw new IllegalArgumentException(variable + " needs five multipliers");
            }
        }
    }

    /** The index, at least 0.0625 and at most 1053, not rounded, and the working. */
    public record Result(double index, List<Step> working) {

        public String band() {
            return index <= 3 ? "Probably safe" : index >= 7 ? "Probably hazardous" : "Uncertain, between 3 and 7";
        }
    }

    /** Computes the index of ratings from 1 to 5; all six must be there. */
    public Result of(Map<Variable, Integer> ratings) {
        List<Step> working = new ArrayList<>();
        for (Variable variable : Variable.values()) {
            Integer rating = ratings.get(variable);
            if (rating == null) {
                throw new IllegalArgumentException(variable + " is missing");
            }
            Checks.within(variable.toString(), rating, 1, 5);
            working.add(new Step(variable.toString(), "multiplier of rating " + rating, multipliers.get(variable)[rating - 1]));
        }
        return new Result(product(working.stream().mapToDouble(Step::value).toArray()), List.copyOf(working));
    }

    static double product(double... factors) {
        double product = 1;
        for (double factor : factors) {
            product *= factor;
        }
        return product;
    }

    /** The rating, 1 to 5, of the share of the cycle spent exerting; the share is first rounded to a whole percent (our rule). */
    public static int durationOfExertion(double percent) {
        return band(Math.round(Checks.within("Share of the cycle", percent, 0, 100, "%")), 10, 30, 50, 80);
    }

    /** The rating of efforts per minute, first rounded to a whole number (our rule). */
    public static int effortsPerMinute(double perMinute) {
        return band(Math.round(Checks.within("Efforts per minute", perMinute, 0, 200, "/min")), 4, 9, 15, 20);
    }

    private static int band(long value, int... starts) {
        int rating = 1;
        for (int start : starts) {
            rating += value >= start ? 1 : 0;
        }
        return rating;
    }
}
