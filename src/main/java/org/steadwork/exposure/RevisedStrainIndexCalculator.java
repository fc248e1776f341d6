package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.List;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Rounded;
import org.steadwork.exposure.method.RevisedStrainIndex;

/** The revised strain index of 2017 from measures. */
@Singleton
class RevisedStrainIndexCalculator extends MethodCalculator {

    private static final double SECONDS_A_MINUTE = 60;

    RevisedStrainIndexCalculator() {
        super("revised-strain-index");
    }

    @Override
    public List<Input> inputs() {
        return List.of(Input.number("effort", "Effort", "Borg CR-10", 0.1, 10, 2).hint("As the worker rates it; or the share of the greatest force × 10.").example(3),
                Input.number("per_minute", "Efforts a minute", "/min", 0.1, 200, 2).example(12),
                Input.number("seconds", "Length of one effort", "s", 0.1, 60, 2).example(2), choice("wrist_direction").startsAt("flexion"),
                Input.number("wrist_degrees", "Bend of the wrist", "°", 0, 90, 1).startsAt(0).example(20),
                Input.number("hours", "This task a day", "h", 0.01, 24, 2).example(8));
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        double inMinute = given.number("per_minute") * given.number("seconds");
        if (inMinute > SECONDS_A_MINUTE + 1e-9) {
            throw CalculatorRefusal.at(given.path("seconds"), "Efforts and their length fill " + Rounded.to(inMinute, 1) + " s of each minute; together at most 60 s.",
                    given.decimal("seconds"), "efforts a minute × length at most 60 s");
        }
        double wrist = given.choice("wrist_direction").equals("extension") ? -given.number("wrist_degrees") : given.number("wrist_degrees");
        RevisedStrainIndex.Result result = RevisedStrainIndex.of(new RevisedStrainIndex.Task(given.number("effort") / 10, given.number("per_minute"),
                given.number("seconds"), wrist, given.number("hours")));
        BenchAnswer answer = BenchAnswer.of(result.band()).marked(result.index() <= RevisedStrainIndex.HIGHER ? Mark.IN : Mark.OUT)
                .headline("Revised Strain Index", Rounded.to(result.index(), 1), "");
        working(answer, result.working(), 4);
        return answer.step("Revised Strain Index", "the product of the five; over 10 is the higher exposure", Rounded.to(result.index(), 3), "")
                .note("The formulas and the limit of 10 are from memory.").result("index", result.index());
    }
}
