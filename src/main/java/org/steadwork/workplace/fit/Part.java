package org.steadwork.workplace.fit;

/** A part of the work place that is set, in the order in which a person sets it; all mm. */
public enum Part {
    /** Depth of the seat pan, backrest to front edge. */
    SEAT_DEPTH,
    /** Thickness of a cushion on the backrest; 0 for none. */
    CUSHION,
    /** Floor to the top of the loaded seat. */
    SEAT,
    /** Floor to the top of the footrest; 0 for none. */
    FOOTREST,
    /** Floor to the desk top. */
    DESK,
    /** Loaded seat to the top of the armrest. */
    ARMREST,
    /** Floor to the top edge of what is shown on the screen; its travel is above the desk top. */
    SCREEN_TOP,
    /** Eye to the centre of the screen. */
    DISTANCE
}
