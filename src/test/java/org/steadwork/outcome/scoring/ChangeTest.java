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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

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

    @ParameterizedTest(name = "{0} to {1} is {2} %")
    @CsvFileSource(resources = "percents.csv", numLinesToSkip = 1)
    void percentChangeAndItsTraps(double baseline, double later, Double percent, String word, String unstable, String responder, String tag) {
        PercentChange change = PercentChange.ofPain(baseline, later);
        assertEquals(percent != null, change.value().isPresent());
        if (percent != null) {
            assertEquals(percent, change.value().getAsDouble(), 0.05 + 1e-9);
        }
        assertEquals(word == null ? "" : word, change.painWord());
        assertEquals(unstable.equals("yes"), change.unstable());
        assertEquals(unstable.equals("no"), change.caution().isEmpty());
        assertEquals(responder.equals("yes"), PercentChange.responder(baseline, later));
    }

    @Test
    void whatIsNoPainIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> PercentChange.ofPain(11, 4));
        assertThrows(IllegalArgumentException.class, () -> PercentChange.ofPain(4, Double.NaN));
    }

    @ParameterizedTest(name = "SD {0}, reliability {1}")
    @CsvFileSource(resources = "reliable-changes.csv", numLinesToSkip = 1)
    void reliableChangeAsPublished(double sd, double reliability, double sem, double semTolerance, double difference, double mdc90, double mdc95,
            double tolerance, String tag) {
        ReliableChange change = ReliableChange.of(sd, reliability);
        assertEquals(sem, change.standardError(), semTolerance + 1e-9);
        assertEquals(difference, change.differenceError(), 0.0005 + 1e-9);
        assertEquals(mdc90, change.mdc90(), tolerance + 1e-9);
        assertEquals(mdc95, change.mdc95(), tolerance + 1e-9);
    }

    // Jacobson and Truax 1991: 32.5 to 47.5 (inputs M, arithmetic C)
    @Test
    void theIndexOfThePaper() {
        assertEquals(3.16, ReliableChange.of(7.5, 0.80).index(32.5, 47.5), 0.005);
        assertThrows(IllegalArgumentException.class, () -> ReliableChange.of(7.5, 1));
    }

    @ParameterizedTest(name = "{1} in weeks {0}: {2} a week")
    @CsvFileSource(resources = "trends.csv", numLinesToSkip = 1)
    void medianSlopes(String weeks, String scores, double slope, double intercept, double otherIntercept, double tauB, String tag) {
        TheilSen trend = TheilSen.of(numbers(weeks), numbers(scores));
        assertEquals(slope, trend.slope(), 1e-9);
        assertEquals(intercept, trend.intercept(), 1e-9);
        assertEquals(otherIntercept, trend.otherIntercept(), 1e-9);
        assertEquals(tauB, trend.tauB(), 0.0005);
    }

    @Test
    void twoPointsAreNoTrend() {
        assertThrows(IllegalArgumentException.class, () -> TheilSen.of(new double[] {0, 1}, new double[] {4, 3}));
        assertThrows(IllegalArgumentException.class, () -> TheilSen.of(new double[] {1, 1, 1}, new double[] {4, 3, 2}));
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

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private static ChangeVerdict.Kind of(double earlier, double later, OptionalDouble error, OptionalDouble importance) {
        return ChangeVerdict.of(earlier, later, Direction.LOWER_BETTER, error, importance).kind();
    }

    private static int rank(ChangeVerdict.Kind kind) {
        return List.of(ChangeVerdict.Kind.WORSE, ChangeVerdict.Kind.NO_REAL_CHANGE, ChangeVerdict.Kind.POSSIBLY_IMPORTANT,
                ChangeVerdict.Kind.REAL_NOT_YET_IMPORTANT, ChangeVerdict.Kind.IMPORTANT).indexOf(kind);
    }
}
