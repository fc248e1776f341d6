package org.steadwork.workplace.fit;

import java.util.Map;

/**
 * What setting the desk by hand arrives at, and what it then asks for; all mm, not rounded, 0 where nothing is asked for.
 *
 * @param settings the screen top is the wanted one, whether or not the stand reaches it
 * @param riser how far the wanted screen top is above what the stand reaches
 * @param screenTooHighBy how far the lowest screen top is above the wanted one
 * @param deskRaise how far a desk that is too low should be raised
 * @param keyboardLowering how far the keys are too high
 * @param cushion thickness on the backrest that would open the gap behind the knee
 * @param seatTooShort the gap behind the knee is wider than in range
 */
public record HandResult(Mode mode, Settings settings, Map<Deviation, Double> deviations, double riser, double screenTooHighBy,
        double deskRaise, double keyboardLowering, double cushion, boolean seatTooShort) {

    /** What the seat is set from. */
    public enum Mode {
        /** The feet; the desk follows. */
        FEET,
        /** The desk, which cannot follow; the feet get a footrest. */
        ELBOW,
        /** The feet, although the desk is then too low. */
        FEET_LOW_DESK
    }
}
