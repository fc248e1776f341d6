package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.BodyMeasure.*;

import java.util.List;

/** A part of the person, and the measures without which it is drawn dotted. */
enum BodyPart {
    TRUNK(List.of(), List.of()),
    HEAD(List.of(EYE_SITTING), List.of(EYE_STANDING)),
    THIGH(List.of(BodyMeasure.THIGH, BUTTOCK_POPLITEAL), List.of()),
    SHANK(List.of(POPLITEAL), List.of()),
    FOOT(List.of(POPLITEAL), List.of()),
    ARM(List.of(ELBOW_REST, UPPER_ARM, FOREARM_HAND), List.of(ELBOW_STANDING, UPPER_ARM, FOREARM_HAND));

    private final List<BodyMeasure> sitting;
    private final List<BodyMeasure> standing;

    BodyPart(List<BodyMeasure> sitting, List<BodyMeasure> standing) {
        this.sitting = sitting;
        this.standing = standing;
    }

    boolean measured(Lengths body, boolean whenStanding) {
        return (whenStanding ? standing : sitting).stream().allMatch(body::measured);
    }
}
