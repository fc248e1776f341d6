package org.steadwork.workplace.fit;

import java.util.OptionalDouble;

/**
 * One way the work place can be set; every value in mm, NaN where the part is absent or was not looked at.
 * Footrest and cushion are 0 when there is none.
 */
public record Settings(double seatDepth, double cushion, double seat, double footrest, double desk, double armrest, double screenTop,
        double distance) {

    public static final Settings UNKNOWN = new Settings(Double.NaN, 0, Double.NaN, 0, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    public Settings {
        for (double value : new double[] {seatDepth, cushion, seat, footrest, desk, armrest, screenTop, distance}) {
            if (Double.isInfinite(value) || Math.abs(value) > 10_000) {
                throw new IllegalArgumentException("A setting must be a length in mm, but was " + value);
            }
        }
        if (!(cushion >= 0) || !(footrest >= 0)) {
            throw new IllegalArgumentException("Footrest and cushion are 0 when there is none, but were " + footrest + " and " + cushion);
        }
    }

    public OptionalDouble of(Part part) {
        double value = value(part);
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    double value(Part part) {
        return switch (part) {
            case SEAT_DEPTH -> seatDepth;
            case CUSHION -> cushion;
            case SEAT -> seat;
            case FOOTREST -> footrest;
            case DESK -> desk;
            case ARMREST -> armrest;
            case SCREEN_TOP -> screenTop;
            case DISTANCE -> distance;
        };
    }

    /** Returns these settings with one changed; NaN for not known. */
    public Settings with(Part part, double value) {
        return new Settings(pick(part, Part.SEAT_DEPTH, value), pick(part, Part.CUSHION, value), pick(part, Part.SEAT, value),
                pick(part, Part.FOOTREST, value), pick(part, Part.DESK, value), pick(part, Part.ARMREST, value),
                pick(part, Part.SCREEN_TOP, value), pick(part, Part.DISTANCE, value));
    }

    private double pick(Part changed, Part part, double value) {
        return changed == part ? value : value(part);
    }

    /** Returns the sum of the changes from other settings, in mm, over the parts known in both. */
    double changeFrom(Settings other) {
        double change = 0;
        for (Part part : Part.values()) {
            double difference = Math.abs(value(part) - other.value(part));
            if (!Double.isNaN(difference)) {
                change += difference;
            }
        }
        return change;
    }
}
