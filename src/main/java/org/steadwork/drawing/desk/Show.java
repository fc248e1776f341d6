package org.steadwork.drawing.desk;

/** Which of the two states a drawing shows. */
public enum Show {
    BOTH, PRESENT, PROPOSED;

    boolean present() {
        return this != PROPOSED;
    }

    boolean proposed() {
        return this != PRESENT;
    }
}
