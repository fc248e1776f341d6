package org.steadwork.drawing.figure;

/**
 * Lengths of the drawn skeleton as a share of stature times 100. Textbook-like and chosen to look right: they are not
 * measured and must not be used to fit a work place.
 */
final class Lengths {

    static final double ANKLE_HEIGHT = 3.9;
    static final double SHANK = 24.6;
    static final double THIGH = 24.5;
    static final double PELVIS = 9.0;
    static final double LOWER_TRUNK = 9.0;
    static final double UPPER_TRUNK = 10.8;
    static final double NECK = 5.2;
    static final double HALF_HIPS = 5.0;
    static final double HALF_SHOULDERS = 10.4;
    static final double UPPER_ARM = 17.6;
    static final double FOREARM = 14.6;
    static final double PALM = 4.6;
    static final double BALL_OF_FOOT = 8.6;
    static final double HEEL = 4.0;
    static final double TOES = 3.6;
    /** From wrist to the point of the palm that is placed on things. */
    static final double WRIST_TO_PALM = PALM * 0.8;

    private Lengths() {
    }
}
