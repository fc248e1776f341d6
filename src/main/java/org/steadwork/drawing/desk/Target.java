package org.steadwork.drawing.desk;

/** What is judged, each as a signed deviation in millimetres or an angle in degrees. */
public enum Target {
    /** Seat over the height the legs want with the foot support there is; positive: the feet hang. */
    FEET,
    /** Middle letter row over the elbow. */
    ELBOW,
    /** Room between the thigh and the underside of the desk. */
    THIGH,
    /** Room between the seat's front edge and the back of the knee. */
    KNEE,
    /** Arm rest over the elbow. */
    ARMREST,
    /** Top of the screen below the eye, with single-vision lenses. */
    SCREEN_SINGLE,
    /** Top of the screen below the eye, with progressive lenses. */
    SCREEN_PROGRESSIVE,
    /** Eye to the screen. */
    DISTANCE,
    /** Gaze to the middle of the screen, degrees below the horizontal. */
    GAZE
}
