package org.steadwork.outcome.scoring;

import java.util.OptionalDouble;

/**
 * One squeeze of the dynamometer: kilograms, or the reason why there is no reading. A trial stopped for pain has a reason and
 * no number; it is never 0.
 *
 * @param kg in [0, 100]
 * @param notDone the reason, blank when there is a reading
 */
public record GripTrial(OptionalDouble kg, String notDone) {

    /** The reason that is entered most. */
    public static final String STOPPED_FOR_PAIN = "stopped for pain";

    private static final double MOST_KG = 100;

    public GripTrial {
        notDone = notDone == null ? "" : notDone.strip();
        if (kg.isPresent() && !(kg.getAsDouble() >= 0 && kg.getAsDouble() <= MOST_KG)) {
            throw new IllegalArgumentException("A grip reading must be a number from 0 to 100 kg, but is " + kg.getAsDouble());
        }
        if (kg.isPresent() != notDone.isEmpty()) {
            throw new IllegalArgumentException("A trial has either a reading or a reason why there is none");
        }
    }

    public static GripTrial of(double kg) {
        return new GripTrial(OptionalDouble.of(kg), "");
    }

    /** Makes a trial without a reading; the reason must not be blank. */
    public static GripTrial without(String reason) {
        return new GripTrial(OptionalDouble.empty(), reason);
    }
}
