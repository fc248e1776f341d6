package org.steadwork.casefile.workplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.steadwork.kernel.Answer;

class GradedReturnTest {

    private static final Set<DayOfWeek> MONDAY_TO_FRIDAY = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    @ParameterizedTest(name = "plan {0}")
    @CsvFileSource(resources = "graded-returns.csv", numLinesToSkip = 1)
    void plansAreThePrintedOnes(String name, double normalHours, int startPercent, int weeks, String planHours, double hoursNotWorked) {
        GradedReturn plan = new GradedReturn((int) Math.round(normalHours * 60), startPercent, weeks);
        List<Integer> printed = Arrays.stream(planHours.split(" ")).map(hours -> (int) Math.round(Double.parseDouble(hours) * 60)).toList();
        assertEquals(printed, plan.phasedWeeks());
        assertEquals(plan.normalWeekMinutes(), plan.minutesOfWeek(weeks + 1));
        assertEquals(hoursNotWorked * 60, plan.minutesNotWorked());
    }

    @Test
    void weeksNeverFallAndNeverPassTheNormalWeek() {
        for (int normal = 300; normal <= 3000; normal += 45) {
            for (int percent = 5; percent < 100; percent += 5) {
                for (int weeks = 1; weeks <= 8; weeks++) {
                    GradedReturn plan = new GradedReturn(normal, percent, weeks);
                    for (int week = 1; week <= weeks; week++) {
                        assertTrue(plan.minutesOfWeek(week) <= plan.minutesOfWeek(week + 1), plan.toString());
                    }
                    checkSplits(plan);
                }
            }
        }
    }

    private static void checkSplits(GradedReturn plan) {
        int normalDay = (plan.normalWeekMinutes() + 4) / 5;
        for (int week = 1; week <= plan.weeks() + 1; week++) {
            Map<DayOfWeek, Integer> split = WeekSplit.of(plan, week, MONDAY_TO_FRIDAY);
            assertEquals(plan.minutesOfWeek(week), split.values().stream().mapToInt(Integer::intValue).sum(), plan + " week " + week);
            assertTrue(split.values().stream().allMatch(minutes -> minutes >= 0 && minutes <= normalDay), plan + " week " + week + split);
        }
    }

    @Test
    void aStartAtHalfKeepsTheMiddleDayFreeWhileTheOthersCanCarryIt() {
        GradedReturn plan = new GradedReturn(2400, 50, 4);
        assertEquals(List.of(300, 300, 0, 300, 300), List.copyOf(WeekSplit.of(plan, 1, MONDAY_TO_FRIDAY).values()));
        assertEquals(List.of(375, 375, 0, 375, 375), List.copyOf(WeekSplit.of(plan, 2, MONDAY_TO_FRIDAY).values()));
        assertEquals(List.of(420, 420, 420, 420, 420), List.copyOf(WeekSplit.of(plan, 4, MONDAY_TO_FRIDAY).values()));
        assertEquals(List.of(285, 285, 285, 285, 300), List.copyOf(WeekSplit.of(new GradedReturn(2400, 60, 2), 1, MONDAY_TO_FRIDAY).values()));
    }

    // By hand: 37.5 h from half over three weeks is 18.75, 25 and 31.25 h, rounded half up to whole hours
    @Test
    void wholeHoursAreRoundedHalfUp() {
        assertEquals(List.of(19 * 60, 25 * 60, 31 * 60), new GradedReturn(2250, 50, 3, 60).phasedWeeks());
        assertEquals(List.of(21 * 60), new GradedReturn(41 * 60, 50, 1, 60).phasedWeeks(), "20.5 h goes up");
        assertEquals(2250, new GradedReturn(2250, 50, 3, 60).minutesOfWeek(4), "the usual week stays as it is");
        assertThrows(IllegalArgumentException.class, () -> new GradedReturn(2250, 50, 3, 15));
    }

    @Test
    void aWeekThatBeginsInTheMiddleHasItsDaysInThatOrder() {
        Map<DayOfWeek, Integer> split = WeekSplit.of(new GradedReturn(2400, 50, 4), 1, MONDAY_TO_FRIDAY, DayOfWeek.WEDNESDAY);
        assertEquals(List.of(DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY, DayOfWeek.MONDAY, DayOfWeek.TUESDAY), List.copyOf(split.keySet()));
        assertEquals(List.of(300, 300, 0, 300, 300), List.copyOf(split.values()), "the rest day is the middle one of the plan's week");
    }

    @Test
    void plansOutsideTheirRangeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new GradedReturn(0, 50, 4));
        assertThrows(IllegalArgumentException.class, () -> new GradedReturn(2400, 100, 4));
        assertThrows(IllegalArgumentException.class, () -> new GradedReturn(2400, 50, 0));
        assertThrows(IllegalArgumentException.class, () -> new GradedReturn(2400, 50, 4).minutesOfWeek(0));
    }

    // The rules are common practice: up when all three hold, hold when one fails, back when two fail or two days were missed
    @Test
    void stepsFollowPainMorningAndHours() {
        assertEquals(NextStep.Move.UP, NextStep.of(5, Answer.YES, 960, 1200, 0, false).move());
        assertEquals(NextStep.Move.HOLD, NextStep.of(6, Answer.YES, 1200, 1200, 1, false).move());
        assertEquals(NextStep.Move.HOLD, NextStep.of(5, Answer.YES, 959, 1200, 0, false).move());
        assertEquals(NextStep.Move.BACK, NextStep.of(6, Answer.NO, 1200, 1200, 0, false).move());
        assertEquals(NextStep.Move.BACK, NextStep.of(2, Answer.YES, 1200, 1200, 2, false).move());
        assertEquals(NextStep.Move.STOP, NextStep.of(2, Answer.YES, 1200, 1200, 0, true).move());
        assertEquals(NextStep.Move.ASK, NextStep.of(2, Answer.NOT_ASKED, 1200, 1200, 0, false).move());
        assertEquals(NextStep.Move.ASK, NextStep.of(null, Answer.YES, 1200, 1200, 0, false).move());
        assertThrows(IllegalArgumentException.class, () -> NextStep.of(11, Answer.YES, 1200, 1200, 0, false));
    }
}
