package org.steadwork.workplace.fit;

/** A signed distance, in mm, between where a setting is and where the body wants it. Each is defined in {@link FitModel}. */
public enum Deviation {
    /** Room between the underside of the desk and the thigh; negative means contact. */
    CLEARANCE,
    /** Home row minus elbow; positive means the keys are above the elbow. */
    ELBOW,
    /** Seat minus foot support minus (popliteal height + shoe); positive means the feet hang. */
    FEET,
    /** Eye minus screen top; positive means the screen top is below the eye. */
    SCREEN_DROP,
    /** Room between the seat's front edge and the back of the knee. */
    KNEE_GAP,
    /** Viewing distance. */
    DISTANCE,
    /** Armrest minus elbow rest height. */
    ARMREST
}
