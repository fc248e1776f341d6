package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.List;
import java.util.Locale;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Rounded;
import org.steadwork.exposure.method.LiftingDuration;

/** The duration class of a spell of lifting. */
@Singleton
class LiftingTimeCalculator extends MethodCalculator {

    LiftingTimeCalculator() {
        super("lifting-time");
    }

    @Override
    public List<Input> inputs() {
        return List.of(Input.number("lifting", "Lifting in one spell", "min", 0.1, 480, 1).example(45),
                Input.number("recovery", "Light work after it", "min", 0, 1440, 1).example(54),
                Input.number("factor", "Recovery a short spell needs, as a multiple of its time", "", 0, 10, 2)
                        .hint("1.2 in the manual of 1994, from memory; 1.0 in study notes.").startsAt(LiftingDuration.SHORT_RECOVERY));
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        double lifting = given.number("lifting");
        double recovery = given.number("recovery");
        LiftingDuration duration = LiftingDuration.of(lifting, recovery, given.number("factor"));
        String words = switch (duration) {
            case SHORT -> "Counts as short";
            case MODERATE -> "Counts as moderate";
            case LONG -> "Counts as long";
        };
        return BenchAnswer.of(words).headline("Duration class", words.substring("Counts as ".length()), "")
                .step("Recovery over lifting", "light work / lifting", Rounded.to(recovery / lifting, 2), "")
                .step("Short", "up to 60 min, and recovery at least the factor × the time", Rounded.to(given.number("factor"), 2), "times")
                .step("Moderate", "up to 120 min, and recovery at least 0.3 × the time", "0.3", "times")
                .note("The factor of 1.2 is from memory.").result("duration", duration.name().toLowerCase(Locale.ROOT));
    }
}
