package org.steadwork.caseload.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ProportionTest {

    private static final double HALF_OF_THE_LAST_PRINTED_DIGIT = 0.00005 + 1e-9;
    private static final double CONFIDENCE = Limits.USUAL_CONFIDENCE;

    @ParameterizedTest(name = "{0} of {1}")
    @CsvFileSource(resources = "proportions.csv", numLinesToSkip = 2)
    void limitsAreThosePublished(int count, int of, double share, double low, double high, double correctedLow, double correctedHigh) {
        Proportion proportion = new Proportion(count, of);
        assertEquals(share, proportion.value(), HALF_OF_THE_LAST_PRINTED_DIGIT);
        assertLimits(low, high, proportion.wilson(CONFIDENCE));
        assertLimits(correctedLow, correctedHigh, proportion.wilsonCorrected(CONFIDENCE));
    }

    /** Newcombe 1998, Stat Med 17:873: 56 of 70 against 48 of 80 (data from memory, limits recomputed). */
    @Test
    void theDifferenceOfTwoSharesIsThatPublished() {
        assertLimits(0.0524, 0.3339, new Proportion(56, 70).less(new Proportion(48, 80), CONFIDENCE));
    }

    @Test
    void limitsAreTheRootsOfTheScoreEquation() {
        // the definition of Wilson's interval, not its formula: |p − π| = z √(π (1 − π) / n) at each limit
        for (int n = 1; n <= 60; n++) {
            for (int x = 0; x <= n; x++) {
                Proportion proportion = new Proportion(x, n);
                Limits limits = proportion.wilson(CONFIDENCE);
                for (double limit : new double[] {limits.low(), limits.high()}) {
                    if (limit > 0 && limit < 1) {
                        double allowed = 1.959963984540054 * Math.sqrt(limit * (1 - limit) / n);
                        assertEquals(allowed, Math.abs(proportion.value() - limit), 1e-12, x + " of " + n);
                    }
                }
                Limits wider = proportion.wilsonCorrected(CONFIDENCE);
                assertTrue(wider.low() <= limits.low() && wider.high() >= limits.high(), x + " of " + n);
                assertTrue(limits.low() >= 0 && limits.high() <= 1, x + " of " + n);
            }
        }
    }

    @Test
    void theLostCountAsFailuresInTheLowerBound() {
        Responders responders = new Responders(20, 12, 7);
        assertEquals(Optional.of(new Proportion(7, 12)), responders.amongFollowedUp());
        assertEquals(new Proportion(7, 20), responders.lostAsFailures());
        assertEquals(new Proportion(12, 20), responders.completion());
        assertEquals(Optional.empty(), new Responders(20, 0, 0).amongFollowedUp());
        assertThrows(IllegalArgumentException.class, () -> new Responders(20, 12, 13));
        assertThrows(IllegalArgumentException.class, () -> new Responders(20, 21, 13));
        assertThrows(IllegalArgumentException.class, () -> new Responders(0, 0, 0));
    }

    @Test
    void impossibleCountsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Proportion(1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Proportion(-1, 3));
        assertThrows(IllegalArgumentException.class, () -> new Proportion(4, 3));
        assertThrows(IllegalArgumentException.class, () -> new Proportion(1, 3).wilson(1));
        assertThrows(IllegalArgumentException.class, () -> new Proportion(1, 3).wilson(Double.NaN));
    }

    private static void assertLimits(double low, double high, Limits limits) {
        assertEquals(low, limits.low(), HALF_OF_THE_LAST_PRINTED_DIGIT);
        assertEquals(high, limits.high(), HALF_OF_THE_LAST_PRINTED_DIGIT);
    }
}
