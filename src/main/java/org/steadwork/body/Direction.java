package org.steadwork.body;

import java.util.Locale;

/** A direction on the body chart as seen on screen, where an arrow key leads. */
public enum Direction {
    UP, DOWN, LEFT, RIGHT;

    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
