package org.steadwork.drawing.desk;

/** What the plan judges. Angles in degrees to either side, lengths in mm. */
public enum PlanTarget {
    SCREEN, OTHER_SCREEN, SQUARE, KEYS, POINTER, PAPERS, WINDOW
}
