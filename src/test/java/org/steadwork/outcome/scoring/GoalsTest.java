package org.steadwork.outcome.scoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class GoalsTest {

    @ParameterizedTest(name = "{0} weighing {1}: T {2}")
    @CsvFileSource(resources = "goals.csv", numLinesToSkip = 1)
    void tScores(String ratings, String weights, double t, double tolerance, String tag, String note) {
        assertEquals(t, GoalAttainment.tScore(numbers(ratings), numbers(weights)), tolerance + 1e-9);
    }

    @Test
    void aRatingOutsideTheFiveLevelsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> GoalAttainment.tScore(List.of(3), List.of(1)));
        assertThrows(IllegalArgumentException.class, () -> GoalAttainment.tScore(List.of(1), List.of(0)));
        assertThrows(IllegalArgumentException.class, () -> GoalAttainment.tScore(List.of(1), List.of(1, 1)));
        assertThrows(IllegalArgumentException.class, () -> goal("a", 1, -3, 0, ""));
        assertThrows(IllegalArgumentException.class, () -> goal("a", 10, -1, 0, ""));
        assertThrows(IllegalArgumentException.class, () -> RatedGoal.weight(4, 1));
        assertEquals(6, RatedGoal.weight(3, 2));
    }

    // the figures of [-1,-1] and [1,1] by the same formula: 50 -/+ 20 / sqrt(0.7 x 2 + 0.3 x 4) = 50 -/+ 12.4035
    @Test
    void aWithdrawnGoalLeavesBothTimesAndIsNamed() {
        List<RatedGoal> goals = List.of(goal("lift a crate", 1, -1, 1, ""), goal("drive", 1, -1, 1, ""), goal("swim", 4, -2, -2, "pool closed"),
                goal("cycle", 2, -1, null, ""));
        GoalCourse course = GoalCourse.of(goals).orElseThrow();
        assertEquals(37.597, course.start(), 0.0005);
        assertEquals(62.403, course.now(), 0.0005);
        assertEquals(24.807, course.change(), 0.0005);
        assertEquals(2, course.counted());
        assertEquals(List.of(new GoalCourse.LeftOut("swim", "withdrawn: pool closed"), new GoalCourse.LeftOut("cycle", "not rated now")), course.leftOut());
    }

    @Test
    void withoutARatedGoalThereIsNoT() {
        List<RatedGoal> goals = List.of(goal("swim", 4, null, 1, ""));
        assertTrue(GoalCourse.of(goals).isEmpty());
        assertEquals("not rated at the start", GoalCourse.leftOut(goals).get(0).reason());
    }

    private static RatedGoal goal(String name, int weight, Integer start, Integer now, String withdrawn) {
        return new RatedGoal(name, weight, Optional.ofNullable(start), Optional.ofNullable(now), withdrawn);
    }

    private static List<Integer> numbers(String text) {
        return Arrays.stream(text.split(" ")).map(number -> number.equals("_") ? null : Integer.valueOf(number)).collect(Collectors.toList());
    }
}
