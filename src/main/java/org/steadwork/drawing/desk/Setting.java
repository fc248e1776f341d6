package org.steadwork.drawing.desk;

/**
 * A setting of the work place: heights above the floor and distances in millimetres, angles in degrees.
 * {@link #ARMREST} is counted from the seat; 0 there, at {@link #FOOTREST_HEIGHT} and at {@link #CUSHION} means that there is none.
 * Arm rest and footrest left out were not looked at; a cushion left out is none.
 */
public enum Setting {
    SEAT_HEIGHT("seat height", 0, 1200),
    SEAT_DEPTH("seat depth", 100, 900),
    CUSHION("back cushion", 0, 300),
    BACK_ANGLE("back rest angle", -10, 45),
    BACK_HEIGHT("back rest height", 100, 1200),
    LUMBAR("lumbar height", 50, 500),
    ARMREST("arm rest", 0, 600),
    DESK_HEIGHT("desk height", 200, 1600),
    DESK_THICKNESS("desk thickness", 5, 300),
    DESK_DEPTH("desk depth", 200, 2000),
    /** Height of the middle letter row over the desk top. */
    HOME_ROW("keyboard height", 0, 200),
    HOME_ROW_FROM_EDGE("keys from the desk edge", -100, 900),
    FOOTREST_HEIGHT("footrest", 0, 800),
    FOOTREST_ANGLE("footrest angle", -10, 45),
    SCREEN_TOP("screen top", 200, 2500),
    SCREEN_HEIGHT("screen size", 80, 1200),
    SCREEN_DISTANCE("viewing distance", 150, 2500),
    /** Tilt of the screen, its top away from the person. */
    SCREEN_TILT("screen tilt", -20, 60),
    /** Height of the top of a laptop's own screen above the foot of the laptop. */
    BUILT_IN_TOP("laptop screen top", 80, 400);

    final String word;
    final double lowest;
    final double highest;

    Setting(String word, double lowest, double highest) {
        this.word = word;
        this.lowest = lowest;
        this.highest = highest;
    }

    /** Whether the drawing takes this value; NaN it never takes. */
    public boolean accepts(double value) {
        return value >= lowest && value <= highest;
    }

    /** Whether 0 means that there is no such thing. */
    boolean canBeAbsent() {
        return this == ARMREST || this == FOOTREST_HEIGHT || this == CUSHION;
    }
}
