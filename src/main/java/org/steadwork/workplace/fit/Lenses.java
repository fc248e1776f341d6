package org.steadwork.workplace.fit;

/** The glasses worn at the screen. Progressive, bifocal and trifocal lenses want the screen lower. */
public enum Lenses {
    SINGLE_OR_NONE, PROGRESSIVE
}
