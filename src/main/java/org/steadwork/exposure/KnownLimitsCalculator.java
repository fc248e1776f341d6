package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.List;
import java.util.Map;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.exposure.method.CompositeLifting;
import org.steadwork.exposure.method.CompositeLifting.KnownTask;

/** The composite index of tasks whose frequency-independent limits were worked out already. */
@Singleton
class KnownLimitsCalculator extends MethodCalculator {

    private static final int MOST_TASKS = 10;

    private final LiftingCalculator single = new LiftingCalculator();

    KnownLimitsCalculator() {
        super("lifting-known-limits");
    }

    @Override
    public List<Input> inputs() {
        return List.of(single.choice("duration").example("short"), Input.rows("tasks", "Lifting tasks", 1, MOST_TASKS,
                List.of(Input.number("limit", "Weight limit without frequency", "", 0.1, 100, 2).hint("In kg or lb, as the load."),
                        Input.number("load", "Load", "", 0.1, 450, 2), LiftInputs.perMinute(),
                        Input.yesNo("hands_low", "Do the hands start below 75 cm?").startsAt(false)))
                .example(List.of(Map.of("limit", 20, "load", 30, "per_minute", 1), Map.of("limit", 20, "load", 20, "per_minute", 2))));
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        List<KnownTask> tasks = given.rows("tasks").stream().map(row -> new KnownTask(row.number("limit"), row.number("load"), row.number("per_minute"),
                row.yes("hands_low"))).toList();
        return CompositeAnswer.of(CompositeLifting.ofKnown(ExposureContent.frequencies(), tasks, LiftInputs.duration(given)), "");
    }
}
