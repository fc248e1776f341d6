package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.List;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.CalculatorRefusal;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.exposure.method.CompositeLifting;
import org.steadwork.exposure.method.LiftingDuration;
import org.steadwork.exposure.method.LiftingEquation;

/** The composite index of a job of several lifting tasks, from their measures. */
@Singleton
class SeveralLiftsCalculator extends MethodCalculator {

    private static final int MOST_TASKS = 10;

    private final LiftingEquation equation = ExposureContent.lifting();
    private final LiftingCalculator single = new LiftingCalculator();

    SeveralLiftsCalculator() {
        super("lifting-several");
    }

    @Override
    public List<Input> inputs() {
        List<Input> columns = new ArrayList<>(LiftInputs.geometry());
        columns.add(single.choice("grip").example("good"));
        columns.add(Input.number("load", "Largest load", "kg", 0.1, 200, 2).example(8));
        columns.add(Input.number("mean_load", "Mean load", "kg", 0.1, 200, 2).hint("Where loads differ; else the largest counts.").optional());
        return List.of(single.choice("duration").example("long"), Input.rows("lifts", "Lifting tasks", 1, MOST_TASKS, columns)
                .hint("One row a task. The order does not matter."));
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        LiftingDuration duration = LiftInputs.duration(given);
        List<CompositeLifting.Task> tasks = new ArrayList<>();
        for (Inputs row : given.rows("lifts")) {
            double largest = row.number("load");
            double mean = row.has("mean_load") ? row.number("mean_load") : largest;
            if (mean > largest) {
                throw CalculatorRefusal.at(row.path("mean_load"), "The mean load cannot be more than the largest load, " + row.decimal("load") + " kg.",
                        row.decimal("mean_load"), "at most " + row.decimal("load") + " kg");
            }
            tasks.add(new CompositeLifting.Task(LiftInputs.lift(row, given), largest, mean));
        }
        return CompositeAnswer.of(CompositeLifting.of(equation, tasks, duration), "kg");
    }
}
