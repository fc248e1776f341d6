package org.steadwork.drawing.desk;

/** The flat colours of the desk drawing; none is transparent, so that a letter in PDF/A-1b can carry it. */
final class Palette {
    static final String INK = "#1d2733";
    static final String PAPER = "#faf7f2";
    static final String PLUM = "#6b2d5c";
    static final String AMBER = "#b45309";
    static final String RED = "#b42318";
    static final String GREEN = "#3f6f55";
    static final String MUTED = "#56606b";
    static final String RULE = "#c9c3b8";
    static final String LEVEL = "#aaa398";
    static final String LEADER = "#8d877c";
    static final String BAND = "#eef3ef";
    static final String HATCH = "#8fb09e";
    static final String FURNITURE_EDGE = "#55504a";

    private Palette() {
    }
}
