package org.steadwork.exposure;

import java.util.List;
import java.util.Locale;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchAnswer.Mark;
import org.steadwork.bench.Input;
import org.steadwork.bench.Inputs;
import org.steadwork.bench.Rounded;
import org.steadwork.exposure.method.Coupling;
import org.steadwork.exposure.method.Lift;
import org.steadwork.exposure.method.LiftingDuration;

/** What the lifting calculators ask in common, and how they read it. */
final class LiftInputs {

    static final String REACH = "From between the ankles to between the knuckles, level. Beyond 63 cm the limit is nought.";
    static final String HEIGHT = "From the floor to the knuckles. Above 175 cm the limit is nought.";
    static final String ASYMMETRY = "How far the load sits to the side of straight ahead, without moving the feet.";

    private LiftInputs() {
    }

    /** Reach, height, travel, asymmetry, lifts a minute, each with its example. */
    static List<Input> geometry() {
        return List.of(Input.number("reach", "Reach at the start", "cm", 0, 100, 2).hint(REACH).example(40),
                Input.number("height", "Height of the hands at the start", "cm", 0, 250, 2).hint(HEIGHT).example(30),
                Input.number("travel", "Height travelled", "cm", 0, 250, 2).hint("From start to end, up or down.").example(70),
                Input.number("asymmetry", "Turned to the side", "°", 0, 180, 1).hint(ASYMMETRY).startsAt(0).example(30), perMinute());
    }

    static Input perMinute() {
        return Input.number("per_minute", "Lifts a minute", "/min", 0, 60, 2).hint("The mean over 15 minutes. Below 0.2 counts as 0.2.").example(4);
    }

    static Lift lift(Inputs given, Inputs job) {
        return new Lift(given.number("reach"), given.number("height"), given.number("travel"), given.number("asymmetry"), given.number("per_minute"),
                duration(job), given.choice("grip", Coupling.class));
    }

    static LiftingDuration duration(Inputs given) {
        return LiftingDuration.valueOf(given.choice("duration").toUpperCase(Locale.ROOT));
    }

    /** The mark of an index; the bands between 1 and 3 are a convention. */
    static Mark mark(double index) {
        return index <= 1 ? Mark.IN : index <= 3 ? Mark.EDGE : Mark.OUT;
    }

    /** Says so where an index is over 1 or 3 by less than is shown. */
    static void noteRounding(BenchAnswer answer, double index, boolean defined) {
        if (defined && (index > 1 && index < 1.05 || index > 3 && index < 3.05)) {
            answer.note("Before rounding the index is " + Rounded.to(index, 3) + ", just over the line.");
        }
    }
}
