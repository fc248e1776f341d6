package org.steadwork.outcome;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steadwork.outcome.scoring.GoalCourse;
import org.steadwork.outcome.scoring.RatedGoal;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/** What the page of the goals shows. */
record GoalsView(long caseId, Form form, LocalDate today, List<Goal> goals, List<GoalRating> ratings) {

    private static final List<String> ATTAINED = List.of("\u22122 much less than expected", "\u22121 less than expected", "0 as expected",
            "+1 more than expected", "+2 much more than expected");

    /** The goals that still stand. */
    public List<Goal> standing() {
        return goals.stream().filter(goal -> goal.state() != GoalState.GIVEN_UP).toList();
    }

    public List<Goal> givenUp() {
        return goals.stream().filter(goal -> goal.state() == GoalState.GIVEN_UP).toList();
    }

    public List<Option> states() {
        return Arrays.stream(GoalState.values()).filter(state -> state != GoalState.GIVEN_UP)
                .map(state -> new Option(state.name().toLowerCase(Locale.ROOT), state.label())).toList();
    }

    public List<Option> attainments() {
        List<Option> options = new ArrayList<>();
        for (int x = -2; x <= 2; x++) {
            options.add(new Option(String.valueOf(x), ATTAINED.get(x + 2)));
        }
        return options;
    }

    public List<Option> weights() {
        return List.of(new Option("1", "1 a little"), new Option("2", "2 moderately"), new Option("3", "3 very"));
    }

    public List<Option> baselines() {
        return List.of(new Option("-1", "\u22121, could be worse"), new Option("-2", "\u22122, no worse state is plausible"));
    }

    /** Says the last rating of a goal with its day, blank when it was never rated. */
    public String last(Goal goal) {
        return latest(goal) == null ? "" : ATTAINED.get(latest(goal).attained() + 2) + ", " + Dates.shown(latest(goal).ratedOn());
    }

    private GoalRating latest(Goal goal) {
        return ratings.stream().filter(rating -> rating.goal().id().equals(goal.id())).max(Comparator.comparing(GoalRating::ratedOn)).orElse(null);
    }

    private List<RatedGoal> rated() {
        return goals.stream().map(goal -> new RatedGoal(goal.words(), goal.weightInAll(), Optional.of(goal.startsAt()),
                Optional.ofNullable(latest(goal)).map(GoalRating::attained), goal.state() == GoalState.GIVEN_UP
                        ? goal.whyGivenUp() == null ? "no reason was recorded" : goal.whyGivenUp() : "")).toList();
    }

    /** The T-score at the start and now, on the goals that stand and are rated; null while none is. */
    public GoalCourse attainment() {
        return GoalCourse.of(rated()).orElse(null);
    }

    /** The goals that do not count, each with its reason, at both times. */
    public List<GoalCourse.LeftOut> leftOut() {
        return GoalCourse.leftOut(rated());
    }

    private List<Goal> counted() {
        return standing().stream().filter(goal -> latest(goal) != null).toList();
    }

    public String tNow() {
        return attainment() == null ? "" : shown(attainment().now());
    }

    public String tStart() {
        return attainment() == null ? "" : shown(attainment().start());
    }

    public String tChange() {
        String text = attainment() == null ? "" : shown(attainment().change());
        return text.isEmpty() || text.startsWith("\u2212") || text.equals("0.0") ? text : "+" + text;
    }

    /** The inputs of the T-score, a line a goal. */
    public List<String> inputs() {
        return counted().stream().map(goal -> "\u201c" + goal.words() + "\u201d: weight " + goal.weightInAll() + weights(goal) + ", start "
                + signed(goal.startsAt()) + ", now " + signed(latest(goal).attained())).toList();
    }

    /** The sums of the T-score with their numbers. */
    public String sums() {
        int weighted = 0;
        int squares = 0;
        int sum = 0;
        for (Goal goal : counted()) {
            int weight = goal.weightInAll();
            weighted += weight * latest(goal).attained();
            squares += weight * weight;
            sum += weight;
        }
        return "50 + 10 \u00d7 " + signed(weighted).replace("+", "") + " \u00f7 \u221a(0.7 \u00d7 " + squares + " + 0.3 \u00d7 " + sum + "\u00b2) = " + tNow();
    }

    private static String weights(Goal goal) {
        return goal.importance() == null && goal.difficulty() == null ? "" : " (importance " + (goal.importance() == null ? 1 : goal.importance())
                + " \u00d7 difficulty " + (goal.difficulty() == null ? 1 : goal.difficulty()) + ")";
    }

    private static String signed(int number) {
        return number > 0 ? "+" + number : String.valueOf(number).replace('-', '\u2212');
    }

    private static String shown(double t) {
        return java.math.BigDecimal.valueOf(t).setScale(1, java.math.RoundingMode.HALF_UP).toPlainString().replace('-', '\u2212');
    }
}
