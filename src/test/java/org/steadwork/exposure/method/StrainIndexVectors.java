package org.steadwork.exposure.method;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumMap;
import java.util.Map;
import org.steadwork.exposure.ExposureContent;

/** Checks a strain-index vector given as multipliers by finding the ratings that have them in the table. */
public final class StrainIndexVectors {

    private StrainIndexVectors() {
    }

    public static void check(double[] multipliers, double expected) {
        StrainIndex method = ExposureContent.strainIndex();
        StrainIndex.Variable[] order = {StrainIndex.Variable.INTENSITY, StrainIndex.Variable.DURATION_OF_EXERTION,
            StrainIndex.Variable.EFFORTS_PER_MINUTE, StrainIndex.Variable.HAND_WRIST_POSTURE, StrainIndex.Variable.SPEED_OF_WORK,
            StrainIndex.Variable.DURATION_PER_DAY};
        Map<StrainIndex.Variable, Integer> ratings = new EnumMap<>(StrainIndex.Variable.class);
        for (int i = 0; i < order.length; i++) {
            ratings.put(order[i], ratingWith(method, order[i], multipliers[i]));
        }
        assertEquals(expected, method.of(ratings).index(), 1e-9);
    }

    private static int ratingWith(StrainIndex method, StrainIndex.Variable variable, double multiplier) {
        for (int rating = 1; rating <= 5; rating++) {
            Map<StrainIndex.Variable, Integer> ratings = new EnumMap<>(StrainIndex.Variable.class);
            for (StrainIndex.Variable v : StrainIndex.Variable.values()) {
                ratings.put(v, v == variable ? rating : 1);
            }
            if (method.of(ratings).working().get(variable.ordinal()).value() == multiplier) {
                return rating;
            }
        }
        throw new AssertionError(variable + " has no multiplier " + multiplier);
    }
}
