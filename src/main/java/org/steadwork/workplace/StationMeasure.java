package org.steadwork.workplace;

import java.util.Optional;
import org.steadwork.workplace.fit.Part;

/** What is read off at the work place, in mm; the constant's name, in lower case, is its content key. */
enum StationMeasure {
    SEAT_NOW(Part.SEAT, Role.NOW), SEAT_LOW(Part.SEAT, Role.LOW), SEAT_HIGH(Part.SEAT, Role.HIGH), SEAT_STEP(Part.SEAT, Role.STEP),
    SEAT_DEPTH_NOW(Part.SEAT_DEPTH, Role.NOW), SEAT_DEPTH_LOW(Part.SEAT_DEPTH, Role.LOW), SEAT_DEPTH_HIGH(Part.SEAT_DEPTH, Role.HIGH),
    CUSHION_NOW(Part.CUSHION, Role.NOW),
    ARMREST_NOW(Part.ARMREST, Role.NOW), ARMREST_LOW(Part.ARMREST, Role.LOW), ARMREST_HIGH(Part.ARMREST, Role.HIGH),
    FOOTREST_NOW(Part.FOOTREST, Role.NOW), FOOTREST_LOW(Part.FOOTREST, Role.LOW), FOOTREST_HIGH(Part.FOOTREST, Role.HIGH),
    DESK_NOW(Part.DESK, Role.NOW), DESK_LOW(Part.DESK, Role.LOW), DESK_HIGH(Part.DESK, Role.HIGH), DESK_STEP(Part.DESK, Role.STEP),
    TOP_THICKNESS(null, null), HOME_ROW(null, null),
    SCREEN_TOP_NOW(Part.SCREEN_TOP, Role.NOW), SCREEN_LOW(Part.SCREEN_TOP, Role.LOW), SCREEN_HIGH(Part.SCREEN_TOP, Role.HIGH),
    SCREEN_HEIGHT(null, null), DISTANCE_NOW(Part.DISTANCE, Role.NOW), LAPTOP_TOP(null, null), LAPTOP_HOME_ROW(null, null);

    /** What a reading says of a part: how it is set today, an end of its range, or how far apart its settings lie. */
    enum Role {
        NOW, LOW, HIGH, STEP
    }

    private final Part part;
    private final Role role;

    StationMeasure(Part part, Role role) {
        this.part = part;
        this.role = role;
    }

    String key() {
        return FitContent.key(this);
    }

    /** Returns the part it belongs to; null for a size that does not change. */
    Part part() {
        return part;
    }

    Role role() {
        return role;
    }

    /** Tells whether this reading belongs to a part that has a range. */
    boolean hasRange() {
        return part != null && of(part, Role.LOW).isPresent();
    }

    /** Returns the reading of today's setting of the same part. */
    StationMeasure now() {
        return of(part, Role.NOW).orElseThrow();
    }

    static Optional<StationMeasure> of(Part part, Role role) {
        for (StationMeasure measure : values()) {
            if (measure.part == part && measure.role == role) {
                return Optional.of(measure);
            }
        }
        return Optional.empty();
    }
}
