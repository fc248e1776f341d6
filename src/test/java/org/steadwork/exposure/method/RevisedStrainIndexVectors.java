package org.steadwork.exposure.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

/** Checks a vector of the revised index; the extreme one is for the formulas only and must be refused as a task. */
public final class RevisedStrainIndexVectors {

    private static final double HALF_A_PERCENT = 0.005;

    private RevisedStrainIndexVectors() {
    }

    public static void check(double[] in, double expected) {
        double product = StrainIndex.product(RevisedStrainIndex.intensity(in[0]), RevisedStrainIndex.efforts(in[1]),
                RevisedStrainIndex.duration(in[2]), RevisedStrainIndex.posture(in[3]), RevisedStrainIndex.hours(in[4]));
        assertEquals(expected, product, expected * HALF_A_PERCENT);
        if (in[1] * in[2] > 60) {
            assertThrows(IllegalArgumentException.class, () -> new RevisedStrainIndex.Task(in[0], in[1], in[2], in[3], in[4]));
        } else {
            assertEquals(product, RevisedStrainIndex.of(new RevisedStrainIndex.Task(in[0], in[1], in[2], in[3], in[4])).index(), 1e-12);
        }
    }
}
