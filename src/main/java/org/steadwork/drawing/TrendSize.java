package org.steadwork.drawing;

/**
 * The sizes a trend is drawn in. A page carries several and its style sheet shows the one that fits its column by the
 * class of the same name, so that the text keeps its size.
 */
public enum TrendSize {
    WIDE("wide", 880, 300, 36, 210, 16, 38),
    MIDDLE("mid", 600, 280, 32, 10, 16, 38),
    NARROW("narrow", 328, 260, 34, 8, 16, 38),
    SMALL("sm", 280, 150, 34, 8, 14, 34),
    TINY("xs", 176, 140, 34, 6, 14, 34);

    final String cssClass;
    final int width;
    final int height;
    final int left;
    final int right;
    final int top;
    final int bottom;

    TrendSize(String cssClass, int width, int height, int left, int right, int top, int bottom) {
        this.cssClass = cssClass;
        this.width = width;
        this.height = height;
        this.left = left;
        this.right = right;
        this.top = top;
        this.bottom = bottom;
    }

    boolean small() {
        return this == SMALL || this == TINY;
    }
}
