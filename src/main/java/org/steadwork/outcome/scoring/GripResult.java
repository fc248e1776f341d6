package org.steadwork.outcome.scoring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steadwork.body.Side;

/**
 * The strength of one hand on one day.
 *
 * @param meanKg mean of the trials done, kilograms, not rounded; empty when none was done
 * @param done how many trials have a reading
 * @param estimated true when fewer trials than the method asks for were done: marked wherever it is shown
 * @param notDone the reasons for the others, in their order
 * @param norm what healthy people of that group, age and hand squeeze; empty when none is published or age or group is not known
 * @param z (mean − norm) ÷ standard deviation of the norm, not rounded
 * @param percentOfNorm mean ÷ norm × 100, not rounded
 * @param working the arithmetic, with its numbers
 */
public record GripResult(Side hand, OptionalDouble meanKg, int done, boolean estimated, List<String> notDone, Optional<GripNorm> norm,
        OptionalDouble z, OptionalDouble percentOfNorm, String working) {

    public GripResult {
        notDone = List.copyOf(notDone);
    }
}
