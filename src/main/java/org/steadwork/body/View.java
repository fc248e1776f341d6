package org.steadwork.body;

import java.util.Locale;

/** A view of the body chart. */
public enum View {
    FRONT, BACK;

    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String label() {
        return this == FRONT ? "Front" : "Back";
    }
}
