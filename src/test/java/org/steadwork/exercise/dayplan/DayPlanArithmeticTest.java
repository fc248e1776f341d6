package org.steadwork.exercise.dayplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class DayPlanArithmeticTest {

    private static final double EXACT = 1e-9;

    @ParameterizedTest(name = "{0}: {6}")
    @CsvFileSource(resources = "planned-sessions.csv", numLinesToSkip = 1)
    void plannedSessionsAWeek(String exercise, String everyHours, String timesADay, String daysAWeek, double hours, int workDays, int sessions) {
        Dose dose = new Dose(null, Range.of(10), 1, null, null, range(timesADay), range(everyHours), range(daysAWeek));
        assertEquals(sessions, new WorkingDay(hours, workDays).sessionsAWeek(dose));
    }

    /** Source: common practice, no source: eight hours at every 2 h = 4 sessions, every 1 h = 8, every 1.5 h = 5. */
    @ParameterizedTest
    @CsvSource({"2, 4", "1, 8", "1.5, 5", "0.5, 16", "8, 1", "12, 1", "17, 0", "0.1, 80"})
    void deskSessionsOfEightHours(double everyHours, int sessions) {
        assertEquals(sessions, WorkingDay.USUAL.sessionsEvery(everyHours));
    }

    /** Source: common practice, no source: 12 s × 5 × 2 sides = 120 s a session, 8 min a day at every 2 h. */
    @Test
    void theSideStretchTakesEightMinutesOfTheDay() {
        Dose dose = new Dose(Range.of(12), Range.of(5), 2, null, null, null, Range.of(2), Range.of(7));
        assertEquals(120, dose.secondsASession(), EXACT);
        assertEquals(8, WorkingDay.USUAL.minutesADay(dose, 0), EXACT);
        assertEquals(1 / 60.0, WorkingDay.USUAL.share(8), EXACT);
    }

    @Test
    void aRangePlansTheLeastItAsksFor() {
        Dose dose = new Dose(null, Range.of(10), 1, null, null, Range.of(3, 5), null, Range.of(3, 5));
        assertEquals(9, WorkingDay.USUAL.sessionsAWeek(dose));
        Dose desk = new Dose(null, Range.of(10), 1, null, null, null, Range.of(1, 2), Range.of(7));
        assertEquals(4, WorkingDay.USUAL.sessionsADay(desk));
    }

    @Test
    void aMovementWithoutHoldStillTakesTime() {
        Dose dose = new Dose(Range.of(0), Range.of(8, 12), 1, Range.of(2, 3), null, Range.of(1), null, Range.of(3));
        assertEquals(3 * 10 * 2.5, dose.secondsASession(), EXACT);
        assertEquals(7 * 10 * 2.5, dose.secondsASession(7), EXACT);
        assertEquals(7.5 * 60, new Dose(null, null, 1, null, Range.of(5, 10), null, Range.of(1), Range.of(7)).secondsASession(), EXACT);
    }

    @ParameterizedTest(name = "{0} of {1} = {2} %, {3}")
    @CsvFileSource(resources = "adherence.csv", numLinesToSkip = 1)
    void adherence(Integer done, int planned, Integer perCent, Adherence.Band band) {
        Adherence adherence = new Adherence(done, planned);
        assertEquals(perCent == null ? OptionalInt.empty() : OptionalInt.of(perCent), adherence.perCent());
        assertEquals(band, adherence.band());
    }

    @Test
    void sessionsAreNotCountedBelowZero() {
        assertThrows(IllegalArgumentException.class, () -> new Adherence(-1, 3));
        assertThrows(IllegalArgumentException.class, () -> new Adherence(1, -3));
    }

    @ParameterizedTest(name = "ceiling {0}: {1} during, {2} = {4}")
    @CsvFileSource(resources = "pain-rule.csv", numLinesToSkip = 1)
    void painSteersTheLoad(int ceiling, Integer during, PainRule.Morning morning, boolean rising, PainRule.Advice advice) {
        assertEquals(advice, new PainRule(2, 5).withCeiling(ceiling).advice(during, morning, rising));
    }

    @ParameterizedTest(name = "{0} during, {1}, rising {2}, kept {3} = {4}")
    @CsvFileSource(resources = "adherence-and-pain.csv", numLinesToSkip = 1)
    void whatIsHardlyKeptIsMadeSmallerBeforeItIsMadeHarder(Integer during, PainRule.Morning morning, boolean rising, Adherence.Band kept, PainRule.Advice advice) {
        assertEquals(advice, new PainRule(2, 5).advice(during, morning, rising, kept));
    }

    @Test
    void painBeyondTheScaleIsRefused() {
        PainRule rule = new PainRule(2, 5);
        assertThrows(IllegalArgumentException.class, () -> rule.advice(11, PainRule.Morning.USUAL, false));
        assertThrows(IllegalArgumentException.class, () -> rule.advice(-1, PainRule.Morning.USUAL, false));
        assertThrows(IllegalArgumentException.class, () -> new PainRule(6, 5));
    }

    @Test
    void aWorkingDayHasItsLimits() {
        assertThrows(IllegalArgumentException.class, () -> new WorkingDay(0, 5));
        assertThrows(IllegalArgumentException.class, () -> new WorkingDay(Double.NaN, 5));
        assertThrows(IllegalArgumentException.class, () -> new WorkingDay(8, 8));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> WorkingDay.USUAL.sessionsEvery(0)).getMessage().contains("more than 0"));
    }

    private static Range range(String text) {
        return text == null ? null : Range.parse(text);
    }
}
