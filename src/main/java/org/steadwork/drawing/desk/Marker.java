package org.steadwork.drawing.desk;

import java.util.List;

/** The sign of a state, told by shape as well as by colour: disc with tick, open triangle, square with bar, dotted ring. */
final class Marker {

    private Marker() {
    }

    static void draw(Pen pen, double x, double y, State state, double r) {
        String colour = state.colour;
        switch (state) {
            case IN_RANGE -> {
                pen.circle(new Point(x, y), r, Ink.filled(colour));
                pen.path(Pen.outline(List.of(new Point(x - r * .5, y), new Point(x - r * .1, y + r * .42), new Point(x + r * .52, y - r * .43))),
                        Ink.line(Palette.PAPER, 1.4));
            }
            case A_LITTLE_OFF -> pen.polygon(List.of(new Point(x, y - r * 1.1), new Point(x + r * 1.1, y + r * .9), new Point(x - r * 1.1, y + r * .9)),
                    Ink.line(colour, 1.8).fill(Palette.PAPER));
            case OUT_OF_RANGE -> {
                pen.rectangle(x - r, y - r, 2 * r, 2 * r, 0, Ink.filled(colour));
                pen.rectangle(x - .85, y - r * .62, 1.7, r * .76, 0, Ink.filled(Palette.PAPER));
                pen.rectangle(x - .85, y + r * .38, 1.7, 1.7, 0, Ink.filled(Palette.PAPER));
            }
            case NOT_MEASURED -> pen.circle(new Point(x, y), r, Ink.line(colour, 1.4).dash("1.5 2"));
        }
    }
}
