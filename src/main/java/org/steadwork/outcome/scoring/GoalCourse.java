package org.steadwork.outcome.scoring;

import java.util.List;
import java.util.Optional;

/**
 * The T-score of the same goals with the same weights at the start and now.
 *
 * <p>A goal that is withdrawn, or not rated at one of the times, leaves both times with its weight, and is named with the reason (a rule
 * of ours). The change is shown and not judged: no accepted error or important amount exists.
 *
 * @param start T at the start, not rounded; {@code now} now, {@code change} now − start
 * @param counted how many goals it rests on
 * @param leftOut the goals that do not count, each with its reason
 * Source: Kiresuk and Sherman 1968.
 */
public record GoalCourse(double start, double now, double change, int counted, List<LeftOut> leftOut) {

    public GoalCourse {
        leftOut = List.copyOf(leftOut);
    }

    /** A goal that does not count, with the reason in words. */
    public record LeftOut(String goal, String reason) {
    }

    /** Computes both; empty when no goal counts. */
    public static Optional<GoalCourse> of(List<RatedGoal> goals) {
        List<RatedGoal> counted = goals.stream().filter(RatedGoal::counts).toList();
        if (counted.isEmpty()) {
            return Optional.empty();
        }
        List<Integer> weights = counted.stream().map(RatedGoal::weight).toList();
        double start = GoalAttainment.tScore(counted.stream().map(goal -> goal.start().orElseThrow()).toList(), weights);
        double now = GoalAttainment.tScore(counted.stream().map(goal -> goal.now().orElseThrow()).toList(), weights);
        return Optional.of(new GoalCourse(start, now, now - start, counted.size(), leftOut(goals)));
    }

    /** Names the goals that do not count, in their order. */
    public static List<LeftOut> leftOut(List<RatedGoal> goals) {
        return goals.stream().filter(goal -> !goal.counts()).map(goal -> new LeftOut(goal.name(), goal.leftOut())).toList();
    }
}
