package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculator;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.outcome.scoring.GoalCourse;
import org.steadwork.outcome.scoring.RatedGoal;

/** The T-score of agreed goals on the Bench. */
@ApplicationScoped
class GoalCalculator implements Calculator {

    private static final int MOST_GOALS = 10;
    private static final int LONGEST = 200;

    @Override
    public String key() {
        return "goal-attainment";
    }

    @Override
    public BenchGroup group() {
        return BenchGroup.OUTCOMES;
    }

    @Override
    public String title() {
        return "Goal attainment";
    }

    @Override
    public String question() {
        return "How far are the agreed goals reached, all together?";
    }

    @Override
    public List<String> limits() {
        return List.of("A change of T is shown and not judged: no measurement error and no important amount are accepted.",
                "T is about 50, give or take 10, when goals were set well; easy goals give a high T.");
    }

    @Override
    public List<Input> inputs() {
        List<Input> columns = List.of(Input.text("goal", "Goal", LONGEST),
                Input.whole("importance", "Importance", "", 1, 3).startsAt(1), Input.whole("difficulty", "Difficulty", "", 1, 3).startsAt(1),
                Input.whole("at_start", "At the start", "", -2, 2).hint("\u22122 much less than expected, 0 as expected, +2 much more").optional(),
                Input.whole("now", "Now", "", -2, 2).optional(), Input.text("withdrawn", "Withdrawn because", LONGEST).optional());
        return List.of(Input.rows("goals", "Goals", 1, MOST_GOALS, columns)
                .hint("A goal that is withdrawn, or not rated at one of the times, leaves both with its weight, and is named.")
                .example(List.of(Map.of("goal", "Sit through a meeting", "importance", 3, "difficulty", 1, "at_start", -1, "now", 1),
                        Map.of("goal", "Lift a crate of 10 kg", "importance", 2, "difficulty", 1, "at_start", -1, "now", 0),
                        Map.of("goal", "Sleep through", "importance", 1, "difficulty", 1, "at_start", -1, "now", -1))));
    }

    @Override
    public String standing() {
        return "The formula was seen in its source and checked against computed examples and R. Weights from 1 to 3 each are common practice; what "
                + "becomes of a withdrawn goal is a rule of ours.";
    }

    @Override
    public List<String> sources() {
        return List.of("Kiresuk and Sherman, Community Ment Health J 1968", "Turner-Stokes, Clin Rehabil 2009;23:362, with its erratum");
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        List<RatedGoal> goals = new ArrayList<>();
        for (Inputs row : given.rows("goals")) {
            goals.add(new RatedGoal(row.text("goal"), RatedGoal.weight(row.whole("importance"), row.whole("difficulty")), rating(row, "at_start"),
                    rating(row, "now"), row.has("withdrawn") ? row.text("withdrawn") : ""));
        }
        GoalCourse course = GoalCourse.of(goals).orElseThrow(() -> CalculatorRefusal.at(given.path("goals"),
                "No goal is rated at both times: rate at least one that is not withdrawn.", null, "a goal rated at the start and now"));
        BenchAnswer answer = BenchAnswer.of("T " + one(course.start()) + " at the start, " + one(course.now()) + " now")
                .headline("T now", one(course.now()), "").headline("Change of T", (course.change() > 0 ? "+" : "") + one(course.change()), "");
        for (RatedGoal goal : goals) {
            answer.step(goal.name(), "weight × (rating at the start, now)", goal.weight() + " × (" + shown(goal.start()) + ", " + shown(goal.now()) + ")", "");
        }
        answer.step("T", "50 + 10 × Σ(w x) ÷ √(0.7 Σw² + 0.3 (Σw)²), over " + course.counted() + " goals", one(course.now()), "");
        course.leftOut().forEach(out -> answer.note("Left out at both times: " + out.goal() + " (" + out.reason() + ")."));
        return answer.result("t_start", course.start()).result("t_now", course.now()).result("change", course.change())
                .result("counted", course.counted()).result("left_out", course.leftOut().stream()
                        .map(out -> Map.of("goal", out.goal(), "reason", out.reason())).toList());
    }

    private static Optional<Integer> rating(Inputs row, String name) {
        return row.has(name) ? Optional.of(row.whole(name)) : Optional.empty();
    }

    private static String shown(Optional<Integer> rating) {
        return rating.map(value -> Shown.amount(value)).orElse("not rated");
    }

    private static String one(double value) {
        return Shown.fixed(value, 1);
    }
}
