package org.steadwork.drawing.desk;

/** The lenses that decide where the top of the screen belongs. */
public enum Glasses {
    /** No glasses, or single-vision lenses. */
    SINGLE,
    /** Progressive, bifocal or trifocal lenses: the near part is low, so the chin lifts to read a high screen. */
    PROGRESSIVE
}
