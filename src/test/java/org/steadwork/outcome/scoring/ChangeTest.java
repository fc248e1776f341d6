package org.steadwork.outcome.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ChangeTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    @Test
    void theTableOfErrorAndImportance() {
        OptionalDouble error = OptionalDouble.of(5);
        OptionalDouble importance = OptionalDouble.of(8);
        assertEquals(ChangeVerdict.Kind.NO_REAL_CHANGE, of(20, 16, error, importance));
        assertEquals(ChangeVerdict.Kind.REAL_NOT_YET_IMPORTANT, of(20, 15, error, importance));
        assertEquals(ChangeVerdict.Kind.IMPORTANT, of(20, 12, error, importance));
        assertEquals(ChangeVerdict.Kind.WORSE, of(20, 25, error, importance));
        assertEquals(ChangeVerdict.Kind.NO_REAL_CHANGE, of(20, 24.9, error, importance));
        assertEquals(ChangeVerdict.Kind.POSSIBLY_IMPORTANT, of(20, 16, error, OptionalDouble.of(3)));
        assertEquals(ChangeVerdict.Kind.REAL_IMPORTANCE_UNKNOWN, of(20, 10, error, NONE));
        assertEquals(ChangeVerdict.Kind.WORSE, of(20, 29, NONE, importance));
        assertEquals(ChangeVerdict.Kind.NOT_JUDGED, of(20, 0, NONE, NONE));
        assertThrows(IllegalArgumentException.class, () -> of(Double.NaN, 3, error, importance));
    }

    // 2.7 and 5.0 have no exact binary form: an amount that equals the threshold on paper counts
    @Test
    void equalOnPaperIsReached() {
        assertEquals(ChangeVerdict.Kind.IMPORTANT,
                ChangeVerdict.of(2.4, 4.7, Direction.HIGHER_BETTER, OptionalDouble.of(2), OptionalDouble.of(2.3)).kind());
    }

    @Test
    void moreImprovementNeverMakesTheVerdictWorse() {
        Random random = new Random(20260301);
        for (int i = 0; i < 2000; i++) {
            OptionalDouble error = OptionalDouble.of(0.5 + random.nextDouble() * 10);
            OptionalDouble importance = OptionalDouble.of(0.5 + random.nextDouble() * 10);
            double earlier = random.nextDouble() * 50;
            double later = random.nextDouble() * 50;
            double better = later - random.nextDouble() * 5;
            int rank = rank(of(earlier, later, error, importance));
            int betterRank = rank(of(earlier, better, error, importance));
            assertTrue(betterRank >= rank, earlier + " to " + later + " or " + better + ", " + error + ", " + importance);
        }
    }

    // Dworkin 2008 (S): minimal from 10, moderate from 30, substantial from 50 %; the figures computed (C)
    @Test
    void percentChangeAndItsTraps() {
        assertEquals(42.9, PercentChange.ofPain(7, 4).value().getAsDouble(), 0.05);
        assertEquals("moderate", PercentChange.ofPain(7, 4).painWord());
        assertEquals(33.3, PercentChange.ofPain(6, 4).value().getAsDouble(), 0.05);
        assertEquals("substantial", PercentChange.ofPain(8, 4).painWord());
        assertEquals(66.7, PercentChange.ofPain(3, 1).value().getAsDouble(), 0.05);
        assertTrue(PercentChange.ofPain(0, 4).value().isEmpty());
        assertTrue(PercentChange.ofPain(2, 1).unstable());
        assertFalse(PercentChange.ofPain(3, 1).unstable());
        assertFalse(PercentChange.responder(7, 5), "2 points, but 28.6 %");
        assertFalse(PercentChange.responder(8, 6), "2 points, but 25 %");
        assertTrue(PercentChange.responder(6, 4));
        assertThrows(IllegalArgumentException.class, () -> PercentChange.ofPain(11, 4));
        assertThrows(IllegalArgumentException.class, () -> PercentChange.ofPain(4, Double.NaN));
    }

    // Jacobson and Truax 1991, the paper's example (inputs M, arithmetic C); second inputs from Raistrick 1994 (S)
    @Test
    void reliableChangeAsInThePaper() {
        ReliableChange paper = ReliableChange.of(7.5, 0.80);
        assertEquals(3.354, paper.standardError(), 0.0005);
        assertEquals(4.743, paper.differenceError(), 0.0005);
        assertEquals(3.16, paper.index(32.5, 47.5), 0.005);
        assertEquals(9.30, paper.mdc95(), 0.005);
        ReliableChange second = ReliableChange.of(7.6, 0.95);
        assertEquals(1.699, second.standardError(), 0.0005);
        assertEquals(2.403, second.differenceError(), 0.0005);
        assertEquals(4.71, second.mdc95(), 0.005);
        ReliableChange third = ReliableChange.of(15, 0.90);
        assertEquals(4.74, third.standardError(), 0.005);
        assertEquals(11.0, third.mdc90(), 0.05);
        assertEquals(13.1, third.mdc95(), 0.05);
        assertThrows(IllegalArgumentException.class, () -> ReliableChange.of(7.5, 1));
    }

    // Computed with SciPy 1.17 (C)
    @Test
    void medianSlopes() {
        TheilSen four = TheilSen.of(new double[] {0, 2, 4, 6}, new double[] {62, 50, 40, 38});
        assertEquals(-4.5, four.slope(), 1e-9);
        assertEquals(60.5, four.intercept(), 1e-9);
        assertEquals(58.5, four.otherIntercept(), 1e-9);
        TheilSen five = TheilSen.of(new double[] {0, 2, 4, 6, 8}, new double[] {8, 6, 5, 5, 5});
        assertEquals(-0.3125, five.slope(), 1e-9);
        assertEquals(6.875, five.intercept(), 1e-9);
        assertEquals(6.25, five.otherIntercept(), 1e-9);
        assertEquals(-0.837, five.tauB(), 0.0005);
        TheilSen outlier = TheilSen.of(new double[] {0, 1, 2, 3, 4, 5}, new double[] {40, 36, 34, 60, 30, 26});
        assertEquals(-2.5, outlier.slope(), 1e-9);
        assertEquals(39.5, outlier.intercept(), 1e-9);
        assertEquals(41.25, outlier.otherIntercept(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> TheilSen.of(new double[] {0, 1}, new double[] {4, 3}));
    }

    // Computed from the formula of Kiresuk and Sherman 1968 (C)
    @Test
    void goalAttainment() {
        assertEquals(50, GoalAttainment.tScore(List.of(0, 0, 0), List.of(1, 1, 1)), 1e-9);
        assertEquals(59.129, GoalAttainment.tScore(List.of(1, 1, 0), List.of(1, 1, 1)), 0.0005);
        assertEquals(77.386, GoalAttainment.tScore(List.of(2, 2, 2), List.of(1, 1, 1)), 0.0005);
        assertEquals(22.614, GoalAttainment.tScore(List.of(-2, -2, -2), List.of(1, 1, 1)), 0.0005);
        assertEquals(36.307, GoalAttainment.tScore(List.of(-1, -1, -1), List.of(1, 1, 1)), 0.0005);
        assertEquals(60.0, GoalAttainment.tScore(List.of(1), List.of(1)), 1e-9);
        // 50 + 20 ÷ √20.6 = 54.40653; the figure handed down, 54.406, is cut off, so it is good to one unit of its last digit
        assertEquals(54.406, GoalAttainment.tScore(List.of(1, 0, -1), List.of(3, 2, 1)), 0.001);
        assertEquals(54.016, GoalAttainment.tScore(List.of(1, 0), List.of(2, 4)), 0.0005);
        assertEquals(63.944, GoalAttainment.tScore(List.of(0, 1, 2, -1), List.of(1, 2, 3, 1)), 0.0005);
        assertEquals(62.403, GoalAttainment.tScore(Arrays.asList(1, 1, null), List.of(1, 1, 1)), 0.0005);
        assertThrows(IllegalArgumentException.class, () -> GoalAttainment.tScore(List.of(3), List.of(1)));
    }

    // The trap: (3,4,2) then (6,7,-) is 3.5 to 6.5 on what both share, not 3.0 to 6.5 (C)
    @Test
    void ownActivitiesAreComparedOnWhatBothTimesShare() {
        Map<String, Integer> first = Map.of("a", 3, "b", 4, "c", 2);
        Map<String, Integer> second = new HashMap<>(Map.of("a", 6, "b", 7));
        second.put("c", null);
        OwnActivities compared = OwnActivities.compare(first, second).orElseThrow();
        assertEquals(3.5, compared.earlierMean(), 1e-9);
        assertEquals(6.5, compared.laterMean(), 1e-9);
        assertEquals(2.667, OwnActivities.compare(first, Map.of("a", 6, "b", 7, "c", 4)).map(c -> c.laterMean() - c.earlierMean()).orElseThrow(), 0.0005);
        assertTrue(OwnActivities.compare(first, Map.of("a", 6, "d", 7)).isEmpty(), "one shared activity is too few");
        assertThrows(IllegalArgumentException.class, () -> OwnActivities.mean(Map.of("a", 11)));
    }

    @Test
    void aPlateauNeedsTimeScoresAndUnmetGoals() {
        double[] weeks = {0, 2, 4, 6};
        double[] flat = {50, 42, 41, 42};
        OptionalDouble error = OptionalDouble.of(10.5);
        OptionalDouble importance = OptionalDouble.of(12);
        assertTrue(Plateau.reached(weeks, flat, Direction.LOWER_BETTER, error, importance, 2, false));
        assertFalse(Plateau.reached(weeks, flat, Direction.LOWER_BETTER, error, importance, 2, true));
        assertFalse(Plateau.reached(new double[] {0, 1, 2}, new double[] {42, 41, 42}, Direction.LOWER_BETTER, error, importance, 2, false));
        assertFalse(Plateau.reached(weeks, new double[] {62, 50, 40, 38}, Direction.LOWER_BETTER, error, importance, 2, false));
        assertFalse(Plateau.reached(weeks, flat, Direction.LOWER_BETTER, NONE, importance, 2, false));
        assertFalse(Plateau.reached(weeks, new double[] {50, 48, 45, 40}, Direction.LOWER_BETTER, error, importance, 4, false), "still falling by 2 a week");
    }

    private static ChangeVerdict.Kind of(double earlier, double later, OptionalDouble error, OptionalDouble importance) {
        return ChangeVerdict.of(earlier, later, Direction.LOWER_BETTER, error, importance).kind();
    }

    private static int rank(ChangeVerdict.Kind kind) {
        return List.of(ChangeVerdict.Kind.WORSE, ChangeVerdict.Kind.NO_REAL_CHANGE, ChangeVerdict.Kind.POSSIBLY_IMPORTANT,
                ChangeVerdict.Kind.REAL_NOT_YET_IMPORTANT, ChangeVerdict.Kind.IMPORTANT).indexOf(kind);
    }
}
