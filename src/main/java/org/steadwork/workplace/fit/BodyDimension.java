package org.steadwork.workplace.fit;

import java.util.Optional;

/** A seated body dimension that can be estimated from stature, in mm; the constant's name, in lower case, is its content key. */
public enum BodyDimension {
    POPLITEAL_HEIGHT(BodyMeasure.POPLITEAL_HEIGHT),
    BUTTOCK_POPLITEAL_LENGTH(BodyMeasure.BUTTOCK_POPLITEAL_LENGTH),
    ELBOW_REST_HEIGHT(BodyMeasure.ELBOW_REST_HEIGHT),
    /** Sitting erect: the slump has to be taken off. */
    EYE_HEIGHT_SITTING(BodyMeasure.EYE_HEIGHT_SITTING),
    SITTING_HEIGHT(null),
    THIGH_CLEARANCE(BodyMeasure.THIGH_CLEARANCE),
    SHOULDER_HEIGHT_SITTING(null),
    KNEE_HEIGHT_SITTING(null),
    HIP_BREADTH_SITTING(BodyMeasure.HIP_BREADTH_SITTING),
    ABDOMINAL_DEPTH_SITTING(BodyMeasure.ABDOMINAL_DEPTH_SITTING),
    THUMB_TIP_REACH(null),
    SHOULDER_ELBOW_LENGTH(null),
    FOREARM_HAND_LENGTH(null),
    FLOOR_TO_ELBOW(null),
    FLOOR_TO_EYE(null),
    FLOOR_TO_THIGH_TOP(null);

    private final BodyMeasure measure;

    BodyDimension(BodyMeasure measure) {
        this.measure = measure;
    }

    /** Returns the measure that this dimension estimates, if the fit uses it. */
    public Optional<BodyMeasure> measure() {
        return Optional.ofNullable(measure);
    }

    public static Optional<BodyDimension> of(BodyMeasure measure) {
        for (BodyDimension dimension : values()) {
            if (dimension.measure == measure) {
                return Optional.of(dimension);
            }
        }
        return Optional.empty();
    }
}
