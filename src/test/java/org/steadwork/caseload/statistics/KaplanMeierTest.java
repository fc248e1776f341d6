package org.steadwork.caseload.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class KaplanMeierTest {

    private static final double FOUR_DIGITS = 0.00005 + 1e-9;
    private static final double THREE_DIGITS = 0.0005 + 1e-9;
    private static final double CONFIDENCE = Limits.USUAL_CONFIDENCE;
    private static final KaplanMeier TREATED = KaplanMeier.of(Cohorts.group("leukaemia.csv", "6-MP"));
    private static final KaplanMeier PLACEBO = KaplanMeier.of(Cohorts.group("leukaemia.csv", "placebo"));
    private static final KaplanMeier RETURN = KaplanMeier.of(Cohorts.group("return-to-work.csv", "all"));

    @ParameterizedTest(name = "week {0}")
    @CsvFileSource(resources = "leukaemia-curve.csv", numLinesToSkip = 2)
    void theTreatedLeukaemiaCurveIsThatOfTheTextbooks(double time, int atRisk, int events, double survival, double error,
            double low, double high, double plainLow, double plainHigh) {
        CurveStep step = at(TREATED, time);
        assertEquals(atRisk, step.atRisk());
        assertEquals(atRisk, TREATED.atRisk(time));
        assertEquals(events, step.events());
        assertEquals(survival, step.survival(), FOUR_DIGITS);
        assertEquals(error, step.standardError(), FOUR_DIGITS);
        Limits limits = step.limits(CurveLimits.LOG_LOG, CONFIDENCE).orElseThrow();
        assertEquals(low, limits.low(), THREE_DIGITS);
        assertEquals(high, limits.high(), THREE_DIGITS);
        Limits plain = step.limits(CurveLimits.PLAIN, CONFIDENCE).orElseThrow();
        assertEquals(plainLow, plain.low(), THREE_DIGITS);
        assertEquals(plainHigh, plain.high(), THREE_DIGITS);
    }

    @Test
    void thereAreNoOtherStepsThanThosePrinted() {
        assertEquals(List.of(6.0, 7.0, 10.0, 13.0, 16.0, 22.0, 23.0), TREATED.steps().stream().map(CurveStep::time).toList());
        assertEquals(21, TREATED.started());
        assertEquals(9, TREATED.events());
    }

    @ParameterizedTest(name = "week {0}")
    @CsvSource({"1, .9048", "2, .8095", "3, .7619", "4, .6667", "5, .5714", "8, .3810",
        "11, .2857", "12, .1905", "15, .1429", "17, .0952", "22, .0476", "23, 0"})
    void thePlaceboCurveIsThatOfTheTextbooks(double time, double survival) {
        assertEquals(survival, PLACEBO.survivalAt(time), FOUR_DIGITS);
    }

    /** Step worked by hand from the formulas (C): 3/378 + 1/272 + 1/210. */
    @Test
    void theStepAtTenWeeksChecksByHand() {
        CurveStep step = at(TREATED, 10);
        assertEquals(0.0163749, step.greenwoodSum(), 0.5e-7);
        assertEquals(0.752941, step.survival(), 0.5e-6);
        assertEquals(0.096350, step.standardError(), 0.5e-6);
        assertEquals(0.5032, step.limits(CurveLimits.LOG_LOG, CONFIDENCE).orElseThrow().low(), FOUR_DIGITS);
        assertEquals(0.8894, step.limits(CurveLimits.LOG_LOG, CONFIDENCE).orElseThrow().high(), FOUR_DIGITS);
    }

    /** Source: R 4.2 survival (C). */
    @Test
    void mediansAndTheirLimitsAreThoseOfR() {
        assertMedian(TREATED, CurveLimits.LOG_LOG, 13, 23, Double.NaN);
        assertMedian(TREATED, CurveLimits.PLAIN, 13, 23, Double.NaN);
        assertMedian(TREATED, CurveLimits.LOG, 16, 23, Double.NaN);
        assertMedian(PLACEBO, CurveLimits.LOG_LOG, 4, 8, 11);
        assertMedian(PLACEBO, CurveLimits.LOG, 4, 8, 12);
        assertMedian(KaplanMeier.of(Cohorts.group("aml.csv", "maintained")), CurveLimits.LOG_LOG, 13, 31, Double.NaN);
        assertMedian(KaplanMeier.of(Cohorts.group("aml.csv", "not")), CurveLimits.LOG_LOG, 5, 23, 33);
        assertMedian(RETURN, CurveLimits.LOG_LOG, 7, 21, Double.NaN);
        assertMedian(RETURN, CurveLimits.PLAIN, 12, 21, 35);
    }

    @ParameterizedTest(name = "day {0}")
    @CsvFileSource(resources = "return-to-work-curve.csv", numLinesToSkip = 2)
    void theReturnToWorkCurveIsThatOfR(double time, double survival, double error) {
        assertEquals(survival, at(RETURN, time).survival(), FOUR_DIGITS);
        assertEquals(error, at(RETURN, time).standardError(), FOUR_DIGITS);
    }

    @Test
    void theReturnToWorkLimitsAtTheMedianAreThoseOfR() {
        Limits limits = at(RETURN, 21).limits(CurveLimits.LOG_LOG, CONFIDENCE).orElseThrow();
        assertEquals(.1919, limits.low(), FOUR_DIGITS);
        assertEquals(.7297, limits.high(), FOUR_DIGITS);
        assertEquals(7, RETURN.steps().size());
    }

    @Test
    void theMedianIsTheFirstTimeAtHalfOrLess() {
        assertEquals(OptionalDouble.of(2), KaplanMeier.of(allHappened(1, 2, 3, 4)).median());
        assertEquals(OptionalDouble.empty(), KaplanMeier.of(List.of(new Followed(3, false))).median());
    }

    /** Without censoring the curve is the plain share still waiting: an independent count. */
    @Test
    void withoutCensoringTheCurveIsTheShareStillWaiting() {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            double[] times = random.doubles(1 + random.nextInt(40), 0, 20).map(Math::floor).toArray();
            KaplanMeier curve = KaplanMeier.of(allHappened(times));
            for (int t = 0; t <= 20; t++) {
                double day = t;
                long waiting = Arrays.stream(times).filter(time -> time > day).count();
                assertEquals((double) waiting / times.length, curve.survivalAt(t), 1e-12);
            }
        }
    }

    @Test
    void limitsEncloseTheCurveOnEveryScale() {
        Random random = new Random(11);
        for (int round = 0; round < 300; round++) {
            List<Followed> cohort = Stream.generate(() -> new Followed(random.nextInt(30), random.nextBoolean()))
                    .limit(2 + random.nextInt(30)).toList();
            double before = 1;
            for (CurveStep step : KaplanMeier.of(cohort).steps()) {
                assertTrue(step.survival() < before, cohort::toString);
                before = step.survival();
                for (CurveLimits scale : CurveLimits.values()) {
                    step.limits(scale, CONFIDENCE).ifPresent(limits -> assertTrue(limits.low() >= 0 && limits.low() <= step.survival()
                            && step.survival() <= limits.high() && limits.high() <= 1, () -> scale + " " + step));
                }
            }
        }
    }

    @Test
    void aCurveIsCutWhereFewRemainAndNotShownForFew() {
        assertEquals(List.of(5.0, 7.0, 12.0, 14.0, 21.0), RETURN.stepsToShow(10, 5).stream().map(CurveStep::time).toList());
        assertEquals(List.of(), RETURN.stepsToShow(13, 5));
    }

    @Test
    void numbersAtRiskCountThoseStillFollowed() {
        assertEquals(12, RETURN.atRisk(0));
        assertEquals(9, RETURN.atRisk(12));
        assertEquals(8, RETURN.atRisk(14));
        assertEquals(6, RETURN.atRisk(14.5));
        assertEquals(1, RETURN.atRisk(42));
        assertEquals(0, RETURN.atRisk(43));
        assertEquals(0, KaplanMeier.of(List.of()).atRisk(1));
    }

    @Test
    void impossibleTimesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Followed(-1, true));
        assertThrows(IllegalArgumentException.class, () -> new Followed(Double.NaN, true));
        assertThrows(IllegalArgumentException.class, () -> new Followed(Double.POSITIVE_INFINITY, false));
    }

    private static List<Followed> allHappened(double... times) {
        return Arrays.stream(times).mapToObj(time -> new Followed(time, true)).toList();
    }

    private static CurveStep at(KaplanMeier curve, double time) {
        return curve.steps().stream().filter(step -> step.time() == time).findFirst().orElseThrow();
    }

    private static void assertMedian(KaplanMeier curve, CurveLimits scale, double low, double median, double high) {
        assertEquals(OptionalDouble.of(median), curve.median());
        assertEquals(OptionalDouble.of(low), curve.medianLow(scale, CONFIDENCE), scale::toString);
        assertEquals(Double.isNaN(high) ? OptionalDouble.empty() : OptionalDouble.of(high), curve.medianHigh(scale, CONFIDENCE), scale::toString);
    }
}
