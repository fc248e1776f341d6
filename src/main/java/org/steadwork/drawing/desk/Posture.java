package org.steadwork.drawing.desk;

/** How the person works at the desk. */
public enum Posture {
    SITTING, STANDING
}
