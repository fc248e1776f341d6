package org.steadwork.drawing.desk;

/** What the person looks at, and whether the keys hang on it. */
public enum ScreenKind {
    /** A screen on its own foot. */
    SEPARATE,
    /** A laptop whose own keys are used. */
    LAPTOP,
    /** A laptop on a riser or on the desk, with separate keys. */
    LAPTOP_WITH_KEYBOARD
}
