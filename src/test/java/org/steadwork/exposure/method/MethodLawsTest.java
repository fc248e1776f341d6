package org.steadwork.exposure.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.steadwork.exposure.ExposureContent;

/** Laws that hold over random inputs, and the answers at and beyond the edges. */
class MethodLawsTest {

    private static final LiftingEquation LIFTING = ExposureContent.lifting();

    @Test
    void aFartherReachHigherTravelOrMoreLiftsNeverRaisesTheLimit() {
        Random random = new Random(94110);
        for (int i = 0; i < 20_000; i++) {
            double reach = random.nextDouble() * 70;
            double travel = random.nextDouble() * 180;
            double angle = random.nextDouble() * 140;
            double often = random.nextDouble() * 16;
            LiftingDuration duration = LiftingDuration.values()[random.nextInt(3)];
            Coupling coupling = Coupling.values()[random.nextInt(3)];
            double height = random.nextDouble() * 180;
            Lift easy = new Lift(reach, height, travel, angle, often, duration, coupling);
            Lift hard = new Lift(Math.min(100, reach + random.nextDouble() * 10), height, Math.min(250, travel + random.nextDouble() * 20),
                    Math.min(180, angle + random.nextDouble() * 20), often + random.nextDouble(), duration, coupling);
            assertTrue(LIFTING.of(hard, 5).limitKg() <= LIFTING.of(easy, 5).limitKg() + 1e-12, easy + " against " + hard);
        }
    }

    @Test
    void theLimitLiesBetweenNoughtAndTheLoadConstant() {
        Random random = new Random(1991);
        for (int i = 0; i < 20_000; i++) {
            double limit = LIFTING.of(new Lift(random.nextDouble() * 100, random.nextDouble() * 250, random.nextDouble() * 250,
                    random.nextDouble() * 180, random.nextDouble() * 60, LiftingDuration.values()[random.nextInt(3)],
                    Coupling.values()[random.nextInt(3)]), 1).limitKg();
            assertTrue(limit >= 0 && limit <= LiftingEquation.LOAD_CONSTANT, "limit " + limit);
        }
    }

    // Source: DHHS (NIOSH) 94-110, duration categories; the 45 and 54 min example from memory
    @Test
    void durationClassesAskForTheirRecovery() {
        assertEquals(LiftingDuration.SHORT, LiftingDuration.of(45, 54, LiftingDuration.SHORT_RECOVERY));
        assertEquals(LiftingDuration.MODERATE, LiftingDuration.of(45, 50, LiftingDuration.SHORT_RECOVERY));
        assertEquals(LiftingDuration.MODERATE, LiftingDuration.of(90, 27, LiftingDuration.SHORT_RECOVERY));
        assertEquals(LiftingDuration.LONG, LiftingDuration.of(90, 20, LiftingDuration.SHORT_RECOVERY));
        assertEquals(LiftingDuration.MODERATE, LiftingDuration.of(120, 36, LiftingDuration.SHORT_RECOVERY));
    }

    // our rule where the method's two duration rules differ: the higher
    @Test
    void rosaDurationTakesTheHigherOfItsTwoRules() {
        assertEquals(0, Rosa.duration(45, 180));
        assertEquals(1, Rosa.duration(180, 180));
        assertEquals(0, Rosa.duration(50, 50));
        assertEquals(-1, Rosa.duration(20, 40));
    }

    // worked by hand: 23 pauses of half a minute in 240 min, none at the end
    @Test
    void microPausesStandBetweenNotAfter() {
        assertEquals(11.5, ScreenDay.microPauseMinutes(240, 10, 30));
    }

    @Test
    void theRevisedIndexMeetsAtItsBreakPoints() {
        assertEquals(RevisedStrainIndex.intensity(0.4), RevisedStrainIndex.intensity(Math.nextUp(0.4)), 0.001);
        assertEquals(RevisedStrainIndex.efforts(90), RevisedStrainIndex.efforts(Math.nextUp(90.0)), 0.01);
        assertEquals(RevisedStrainIndex.duration(60), RevisedStrainIndex.duration(Math.nextUp(60.0)), 0.01);
        assertEquals(1, RevisedStrainIndex.posture(0), 1e-12);
        assertEquals(1, RevisedStrainIndex.posture(-30), 1e-12);
    }

    @Test
    void everyGrandScoreFromOneToSevenIsReachedAndNoOther() {
        Rula rula = ExposureContent.rula();
        int[] seen = new int[8];
        for (int ua = 1; ua <= 6; ua++) {
            for (int la = 1; la <= 3; la++) {
                for (int w = 1; w <= 4; w++) {
                    for (int n = 1; n <= 6; n++) {
                        for (int t = 1; t <= 6; t++) {
                            for (int use = 0; use <= 4; use++) {
                                int score = rula.of(new Rula.Posture(ua, la, w, 1 + (w + n) % 2, use, n, t, 1 + (t + la) % 2, use)).score();
                                seen[score]++;
                            }
                        }
                    }
                }
            }
        }
        assertEquals(0, seen[0]);
        for (int score = 1; score <= 7; score++) {
            assertTrue(seen[score] > 0, "score " + score + " is never reached");
        }
    }

    @Test
    void whatIsOutOfRangeIsRefusedWithItsName() {
        var wrong = assertThrows(IllegalArgumentException.class, () -> new Lift(Double.NaN, 75, 25, 0, 1, LiftingDuration.SHORT, Coupling.GOOD));
        assertTrue(wrong.getMessage().startsWith("Reach must be from 0 to 100 cm"), wrong.getMessage());
        assertThrows(IllegalArgumentException.class, () -> new Rula.Posture(7, 1, 1, 1, 0, 1, 1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Reba.Posture(0, 1, 1, 0, 1, 1, 1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Rosa.Station(1, 1, 1, 1, 2, 0, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> StaticPosture.trunk(Double.NaN, false, false));
        assertThrows(IllegalArgumentException.class, () -> new RevisedStrainIndex.Task(0, 1, 1, 0, 1));
    }
}
