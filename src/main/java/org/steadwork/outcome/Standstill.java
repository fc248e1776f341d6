package org.steadwork.outcome;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** Whether a measure stands still, and why it is said; a prompt to think again about the plan, never to close a case. */
final class Standstill {

    /** The usual gap between two reviews (common practice), where none is set. */
    private static final double USUAL_WEEKS = 2;
    private static final double DAYS_A_WEEK = 7;

    private Standstill() {
    }

    /** @param nextReview may be null; {@code set} are the goals of the case: while all that stand are met, nothing is at a standstill */
    static boolean reached(MeasureCourse course, LocalDate nextReview, List<Goal> set) {
        if (course.points().isEmpty()) {
            return false;
        }
        long days = nextReview == null ? 0 : ChronoUnit.DAYS.between(course.latest().orElseThrow().on(), nextReview);
        return course.plateau(days > 0 ? days / DAYS_A_WEEK : USUAL_WEEKS, met(set));
    }

    private static boolean met(List<Goal> set) {
        List<Goal> standing = set.stream().filter(goal -> goal.state() != GoalState.GIVEN_UP).toList();
        return !standing.isEmpty() && standing.stream().allMatch(goal -> goal.state() == GoalState.MET);
    }

    /** Says the standstill with its numbers. */
    static String words(MeasureCourse course) {
        List<MeasureCourse.Point> last = course.points().subList(course.points().size() - 3, course.points().size());
        return course.instrument().label() + " " + String.join(", ", last.stream().map(point -> Shown.value(course.instrument(), point.value())).toList())
                + ": within measurement error";
    }
}
