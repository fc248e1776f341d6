package org.steadwork.drawing.desk;

import java.util.EnumMap;
import java.util.Map;

/** The lengths a person is drawn with: the measured ones, and stand-ins from stature for the rest. All in mm. */
final class Lengths {

    /** Only for a drawing without any measure of the person; nothing is judged from it. */
    private static final double STATURE_UNKNOWN = 1700;
    private static final double SHOE_UNKNOWN = 25;

    private final Map<BodyMeasure, Double> measured;
    private final Map<BodyMeasure, Double> drawn = new EnumMap<>(BodyMeasure.class);

    Lengths(Map<BodyMeasure, Double> measured) {
        this.measured = measured;
        double stature = measured.containsKey(BodyMeasure.STATURE) ? measured.get(BodyMeasure.STATURE) : statureFromTheRest();
        for (BodyMeasure measure : BodyMeasure.values()) {
            drawn.put(measure, measured.getOrDefault(measure, measure.ofStature * stature));
        }
        drawn.put(BodyMeasure.STATURE, stature);
        drawn.put(BodyMeasure.SHOE, measured.getOrDefault(BodyMeasure.SHOE, SHOE_UNKNOWN));
    }

    private double statureFromTheRest() {
        return measured.entrySet().stream().filter(e -> e.getKey().ofStature > 0)
                .mapToDouble(e -> e.getValue() / e.getKey().ofStature).average().orElse(STATURE_UNKNOWN);
    }

    double of(BodyMeasure measure) {
        return drawn.get(measure);
    }

    boolean measured(BodyMeasure measure) {
        return measured.containsKey(measure);
    }
}
