package org.steadwork.drawing.desk;

/** What the person sits on. */
public enum SeatKind {
    OFFICE_CHAIR, WHEELCHAIR
}
