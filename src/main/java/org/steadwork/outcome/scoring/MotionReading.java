package org.steadwork.outcome.scoring;

import java.util.OptionalDouble;
import org.steadwork.body.Side;

/**
 * One motion of one side, as measured: degrees, or the reason why it was not measured. Not measured is never 0.
 *
 * @param side left or right for a sided motion, the middle for one of the spine that has no sides
 * @param degrees in [0, the most of the motion], to half a degree or finer
 * @param painLimited true when pain, not the end of the joint, stopped it
 * @param assessor who measured, blank when not known: one person's values lie closer together than two people's
 * @param notMeasured the reason, blank when there is a value
 */
public record MotionReading(Motion motion, Side side, OptionalDouble degrees, Motion.Device device, boolean painLimited, String assessor,
        String notMeasured) {

    public MotionReading {
        assessor = assessor == null ? "" : assessor.strip();
        notMeasured = notMeasured == null ? "" : notMeasured.strip();
        if (motion.sided() == (side == Side.CENTRE)) {
            throw new IllegalArgumentException(motion.name() + (motion.sided() ? " is measured left or right" : " has no sides"));
        }
        if (degrees.isPresent() && !(degrees.getAsDouble() >= 0 && degrees.getAsDouble() <= motion.mostDegrees())) {
            throw new IllegalArgumentException(motion.name() + " must be a number from 0 to " + motion.mostDegrees() + "\u00b0, but is "
                    + degrees.getAsDouble());
        }
        if (degrees.isPresent() != notMeasured.isEmpty()) {
            throw new IllegalArgumentException("A motion has either a value or a reason why it was not measured");
        }
    }
}
