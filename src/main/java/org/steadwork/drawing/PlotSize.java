package org.steadwork.drawing;

/** The widths in which a figure of a group is drawn; the page's style sheet shows the one that fits its column. */
enum PlotSize {
    WIDE("wide", 880, 250, 120), MIDDLE("mid", 600, 220, 104), NARROW("narrow", 328, 0, 4);

    final String cssClass;
    final int width;
    /** Room for labels left and right of a row; 0 puts them above it. */
    final int left;
    final int right;

    PlotSize(String cssClass, int width, int left, int right) {
        this.cssClass = cssClass;
        this.width = width;
        this.left = left;
        this.right = right;
    }

    boolean stacked() {
        return left == 0;
    }
}
