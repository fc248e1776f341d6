package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.List;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Rounded;
import org.steadwork.exposure.method.LiftingDuration;

/** The frequency that counts when lifting comes in bursts. */
@Singleton
class LiftingBurstsCalculator extends MethodCalculator {

    LiftingBurstsCalculator() {
        super("lifting-bursts");
    }

    @Override
    public List<Input> inputs() {
        return List.of(Input.number("rate", "Lifts a minute during the burst", "/min", 0, 60, 2).example(10),
                Input.number("minutes", "Minutes of lifting in each 15 minutes", "min", 0, 15, 1).example(8));
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        double perMinute = LiftingDuration.burstFrequency(given.number("rate"), given.number("minutes"));
        return BenchAnswer.of("Enter this as lifts a minute in the lifting equation").headline("Lifts a minute", Rounded.to(perMinute, 2), "/min")
                .step("Lifts a minute", "rate × minutes / 15", Rounded.to(perMinute, 3), "/min").note("The rule is from memory.").result("per_minute", perMinute);
    }
}
