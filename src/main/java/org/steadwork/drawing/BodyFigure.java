package org.steadwork.drawing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.body.View;

/**
 * What the body chart shows besides its zones: outlines, fine lines and the colours of pain. Lengths are units of the drawing.
 *
 * @param width  of both views side by side
 * @param height of the drawing
 * @param ramp   eleven colours, for pain 0 to 10
 */
record BodyFigure(int width, int height, List<PainStep> ramp, Map<View, Outline> outlines) {

    /** The colour of one amount of pain; {@code dark} fills carry light numbers and patterns. */
    record PainStep(String fill, boolean dark) {
    }

    /** A fine line of one zone, left out where the zone is marked. */
    record Hint(String zone, String path) {
    }

    /** The outline of one view; {@code middle} is the x of the midline. */
    record Outline(int middle, String path, Optional<String> chin, List<Hint> hints) {
    }

    BodyFigure {
        ramp = List.copyOf(ramp);
        outlines = Map.copyOf(new EnumMap<>(outlines));
    }
}
