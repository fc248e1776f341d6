package org.steadwork.body;

import java.util.Locale;

/** A side of the body, always the patient's own: in a front view the patient's right is on the reader's left. */
public enum Side {
    LEFT, RIGHT, CENTRE;

    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Returns the word shown to people: left, right, middle. */
    public String label() {
        return this == CENTRE ? "middle" : key();
    }
}
