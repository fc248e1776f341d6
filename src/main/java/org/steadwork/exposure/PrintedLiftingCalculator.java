package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.List;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Rounded;
import org.steadwork.exposure.method.Coupling;
import org.steadwork.exposure.method.LiftingEquation;
import org.steadwork.exposure.method.PrintedLifting;

/** The lifting equation as the manual's printed examples compute it, in inches and pounds. */
@Singleton
class PrintedLiftingCalculator extends MethodCalculator {

    private final PrintedLifting printed = ExposureContent.printedLifting();
    private final LiftingCalculator metric = new LiftingCalculator();

    PrintedLiftingCalculator() {
        super("lifting-printed");
    }

    @Override
    public List<Input> inputs() {
        return List.of(Input.number("reach", "Reach", "in", 0, 40, 1).hint("Beyond 25 in the limit is nought.").example(20),
                Input.number("height", "Height of the hands", "in", 0, 100, 1).hint("Above 70 in the limit is nought.").example(44),
                Input.number("travel", "Height travelled", "in", 0, 100, 1).example(37),
                Input.number("asymmetry", "Turned to the side", "°", 0, 180, 1).startsAt(0).example(90),
                LiftInputs.perMinute().example(5), metric.choice("duration").example("short"), metric.choice("grip").example("good"),
                Input.number("load", "Load", "lb", 0.1, 450, 1).example(33));
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        double limit = printed.limitPounds(given.number("reach"), given.number("height"), given.number("travel"), given.number("asymmetry"),
                given.number("per_minute"), LiftInputs.duration(given), given.choice("grip", Coupling.class));
        double index = PrintedLifting.index(given.number("load"), limit);
        boolean defined = Double.isFinite(index);
        BenchAnswer answer = BenchAnswer.of(!defined ? "Outside what the equation allows: the limit is nought"
                : LiftingEquation.band(index)).marked(defined ? LiftInputs.mark(index) : Mark.OUT);
        LiftInputs.noteRounding(answer, index, defined);
        return answer.headline("Lifting index", defined ? Rounded.fixed(index, 1) : "not defined", "").headline("Recommended weight limit", Rounded.to(limit, 1), "lb")
                .step("Weight limit", "51 lb × the printed multipliers, two decimals each", Rounded.to(limit, 2), "lb")
                .step("Lifting index", "load / weight limit as printed, to a tenth of a pound", defined ? Rounded.to(index, 2) : "not defined", "")
                .note("Most cells of the frequency table are from memory.").result("limit_lb", limit).result("index", defined ? index : null);
    }
}
