package org.steadwork.drawing;

/** Colours of the body chart that do not depend on the amount of pain; the chart keeps its own light ground in every theme. */
final class BodyPalette {

    static final String INK = "#1d2733";
    static final String PAPER = "#faf7f2";
    static final String WHITE = "#ffffff";
    static final String SKIN = "#f1ebe2";
    static final String SEAM = "#a3978a";
    static final String HINT = "#cabfb2";
    static final String MUTED = "#5b6470";
    /** Patterns on a light fill. */
    static final String DEEP = "#4d1b43";

    private BodyPalette() {
    }
}
