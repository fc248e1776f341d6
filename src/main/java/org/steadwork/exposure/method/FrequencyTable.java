package org.steadwork.exposure.method;

import java.util.EnumMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/** The frequency multipliers by lifts per minute, duration and hand height; straight lines between the printed rows. */
public final class FrequencyTable {

    /** Below this many lifts a minute the first row holds. */
    static final double LEAST = 0.2;
    private static final double MOST = 15;

    private final Map<LiftingDuration, NavigableMap<Double, Double>> low = new EnumMap<>(LiftingDuration.class);
    private final Map<LiftingDuration, NavigableMap<Double, Double>> high = new EnumMap<>(LiftingDuration.class);

    /** Adds a printed cell; {@code handsLow} when the hands start below 75 cm. */
    public FrequencyTable with(double perMinute, LiftingDuration duration, boolean handsLow, double multiplier) {
        Checks.within("Frequency multiplier", multiplier, 0, 1, "");
        var rows = (handsLow ? low : high).computeIfAbsent(duration, d -> new TreeMap<>());
        if (rows.put(perMinute, multiplier) != null) {
            throw new IllegalArgumentException("The frequency table holds " + perMinute + "/min, " + duration + " twice");
        }
        return this;
    }

    /** Returns the multiplier in [0, 1]; over 15 lifts a minute it is 0. */
    public double at(double perMinute, LiftingDuration duration, boolean handsLow) {
        NavigableMap<Double, Double> rows = (handsLow ? low : high).get(duration);
        double f = Math.max(LEAST, perMinute);
        if (f > MOST) {
            return 0;
        }
        var below = rows.floorEntry(f);
        var above = rows.ceilingEntry(f);
        if (below == null || above == null) {
            throw new IllegalArgumentException("The frequency table has no row around " + f + "/min");
        }
        if (below.getKey().equals(above.getKey())) {
            return below.getValue();
        }
        double share = (f - below.getKey()) / (above.getKey() - below.getKey());
        return below.getValue() + share * (above.getValue() - below.getValue());
    }
}
