package org.steadwork.workplace.fit;

/**
 * A measure of the person that the fit uses, in mm (body mass in kg). Seat-based heights start from the seat as it is
 * pressed down by the person; stature and popliteal height are barefoot. Landmarks and allowed ranges are content.
 */
public enum BodyMeasure {
    STATURE, BODY_MASS, POPLITEAL_HEIGHT, SHOE, ELBOW_REST_HEIGHT, EYE_HEIGHT_SITTING, BUTTOCK_POPLITEAL_LENGTH,
    THIGH_CLEARANCE, ARM_REACH, HIP_BREADTH_SITTING, ABDOMINAL_DEPTH_SITTING, STANDING_ELBOW_HEIGHT, STANDING_EYE_HEIGHT
}
