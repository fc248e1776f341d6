package org.steadwork.drawing.desk;

/**
 * A measure of the body that the desk drawing uses, in millimetres.
 * The proportion of stature serves only to draw a part that was not measured (dotted, never judged);
 * a zero means that the part has no such stand-in.
 * Source of the standing proportions: Drillis and Contini, Body segment parameters, 1966 (from memory);
 * the others are drawing proportions of this project, no source.
 */
public enum BodyMeasure {
    STATURE("stature", 0),
    POPLITEAL("lower leg", .242),
    SHOE("shoe", 0),
    ELBOW_REST("elbow", .141),
    EYE_SITTING("eye height", .458),
    BUTTOCK_POPLITEAL("thigh length", .290),
    THIGH("thigh", .092),
    UPPER_ARM("upper arm", .205),
    FOREARM_HAND("forearm", .270),
    ABDOMINAL_DEPTH("belly depth", .138),
    ELBOW_STANDING("standing elbow", .630),
    EYE_STANDING("standing eye height", .936);

    /** Longest length accepted, in mm. */
    static final double LONGEST = 2600;

    final String word;
    final double ofStature;

    BodyMeasure(String word, double ofStature) {
        this.word = word;
        this.ofStature = ofStature;
    }
}
