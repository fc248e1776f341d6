package org.steadwork.workplace.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * One thing to set, in the order in which it is set; mm, not rounded.
 *
 * @param now today's setting; NaN when it was not looked at
 * @param deviation what the setting is judged by, if anything
 * @param off that deviation after all steps; NaN when not known
 */
public record AdjustmentStep(int number, Part part, double now, double proposed, Deviation deviation, double off, Verdict verdict) {

    /** Returns the change, in mm; NaN when today's setting is not known. */
    public double change() {
        return proposed - now;
    }

    static List<AdjustmentStep> from(FitModel model, Settings proposed) {
        List<AdjustmentStep> steps = new ArrayList<>();
        for (Part part : Part.values()) {
            double now = model.station().present().value(part);
            double then = proposed.value(part);
            boolean absent = (part == Part.FOOTREST || part == Part.CUSHION) && then == 0 && !(now > 0);
            if (!Double.isNaN(then) && !absent) {
                Deviation judged = judged(part);
                steps.add(new AdjustmentStep(steps.size() + 1, part, now, then, judged, model.deviation(judged, proposed),
                        model.verdict(judged, proposed)));
            }
        }
        return List.copyOf(steps);
    }

    private static Deviation judged(Part part) {
        return switch (part) {
            case SEAT_DEPTH, CUSHION -> Deviation.KNEE_GAP;
            case SEAT, FOOTREST -> Deviation.FEET;
            case DESK -> Deviation.ELBOW;
            case ARMREST -> Deviation.ARMREST;
            case SCREEN_TOP -> Deviation.SCREEN_DROP;
            case DISTANCE -> Deviation.DISTANCE;
        };
    }
}
