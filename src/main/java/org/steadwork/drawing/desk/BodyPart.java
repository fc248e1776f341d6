package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.BodyMeasure.*;

import java.util.List;

/**
 * A part of the person, and the measures without which it is drawn dotted. The lengths of upper arm and forearm are seldom
 * measured and nothing is judged from them; the arm is dotted when its level, the elbow, is not known.
 */
enum BodyPart {
    TRUNK(List.of(), List.of()),
    HEAD(List.of(EYE_SITTING), List.of(EYE_STANDING)),
    THIGH(List.of(BodyMeasure.THIGH, BUTTOCK_POPLITEAL), List.of()),
    SHANK(List.of(POPLITEAL), List.of()),
    FOOT(List.of(POPLITEAL), List.of()),
    ARM(List.of(ELBOW_REST), List.of(ELBOW_STANDING));

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
