package org.steadwork.exposure;

import jakarta.inject.Singleton;
import java.util.List;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Rounded;
import org.steadwork.exposure.method.ScreenDay;

/** The minutes that short pauses take in all. */
@Singleton
class MicroPauseCalculator extends MethodCalculator {

    MicroPauseCalculator() {
        super("micro-pauses");
    }

    @Override
    public List<Input> inputs() {
        return List.of(Input.whole("time", "Time at work", "min", 1, 1440).example(240), Input.whole("every", "A pause every", "min", 1, 1440).example(10),
                Input.whole("pause", "Length of a pause", "s", 1, 600).example(30));
    }

    @Override
    public BenchAnswer calculate(Inputs given) {
        double minutes = ScreenDay.microPauseMinutes(given.whole("time"), given.whole("every"), given.whole("pause"));
        long pauses = Math.round(minutes * 60 / given.whole("pause"));
        return BenchAnswer.of("Of " + given.whole("time") + " min at work").headline("Pauses", String.valueOf(pauses), "")
                .headline("In all", Rounded.to(minutes, 1), "min").step("Pauses", "one after each interval, none at the end", String.valueOf(pauses), "")
                .step("In all", "pauses × length", Rounded.to(minutes, 2), "min").result("pauses", pauses).result("minutes", minutes);
    }
}
