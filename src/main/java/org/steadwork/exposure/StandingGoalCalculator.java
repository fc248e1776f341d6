package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.List;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Rounded;
import org.steadwork.exposure.method.ScreenDay;

/** Standing and light walking to build up to over a working day. */
@Singleton
class StandingGoalCalculator extends MethodCalculator {

    StandingGoalCalculator() {
        super("standing-goal");
    }

    @Override
    public List<Input> inputs() {
        return List.of(Input.whole("day", "Working day", "min", 1, 1440).example(480),
                Input.whole("standing", "Standing or light walking now", "min", 0, 1440).optional().example(80));
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        int day = given.whole("day");
        double[] goals = ScreenDay.standingGoals(day);
        boolean known = given.has("standing");
        double short1 = known ? Math.max(0, goals[0] - given.whole("standing")) : 0;
        String band = !known ? "Two goals, one after the other" : short1 > 0 ? "Below the first goal" : "At the first goal or above";
        BenchAnswer answer = BenchAnswer.of(band).marked(!known ? Mark.NONE : short1 > 0 ? Mark.EDGE : Mark.IN)
                .headline("First goal", Rounded.to(goals[0], 0), "min").headline("Later goal", Rounded.to(goals[1], 0), "min")
                .step("First goal", "120 min × day / 480 min", Rounded.to(goals[0], 1), "min").step("Later goal", "240 min × day / 480 min", Rounded.to(goals[1], 1), "min");
        if (known) {
            answer.step("Short of the first goal", "first goal − standing now", Rounded.to(short1, 1), "min");
        }
        return answer.result("first_goal", goals[0]).result("later_goal", goals[1]).result("short_of_first", known ? short1 : null);
    }
}
