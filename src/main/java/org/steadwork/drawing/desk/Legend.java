package org.steadwork.drawing.desk;

import java.util.List;

import org.steadwork.drawing.TextWidth;

/** Explains lines and signs in a row that wraps. */
final class Legend {

    private static final double LINE = 18;

    private final Pen pen;
    private final double left;
    private final double right;
    private final double size;
    private double x;
    private double y;

    private Legend(Pen pen, double left, double y, double right, double size) {
        this.pen = pen;
        this.left = left;
        this.right = right;
        this.size = size;
        x = left;
        this.y = y;
    }

    /** Draws the legend and returns the height of its last row. */
    static double draw(Pen pen, double left, double y, double right, double size, Show show, boolean missing) {
        Legend legend = new Legend(pen, left, y, right, size);
        if (show.present()) {
            legend.sample(26, "now (dashed outline)", () -> pen.line(legend.at(0), legend.at(26), Ink.line(Palette.INK, 1.6).dash("6 3.2")));
        }
        if (show.proposed()) {
            legend.sample(22, "proposed (filled)", () -> pen.rectangle(legend.x, legend.y - 5.5, 22, 11, 3,
                    new Ink(Look.proposed().body(), Palette.PLUM, 1, null)));
        }
        legend.sample(14, "target band", () -> pen.hatched(legend.x, legend.y - 5.5, 14, 11));
        for (State state : List.of(State.IN_RANGE, State.A_LITTLE_OFF, State.OUT_OF_RANGE)) {
            legend.sample(11, state.word, () -> Marker.draw(pen, legend.x + 6, legend.y, state, 5));
        }
        if (missing) {
            legend.sample(26, "not measured: a stand-in is drawn, not judged",
                    () -> pen.line(legend.at(0), legend.at(26), Ink.line(Palette.MUTED, 1.6).dash(Ink.DOTS)));
        }
        return legend.y;
    }

    /** Draws the legend of a plan and returns the height of its last row. */
    static double ofPlan(Pen pen, double left, double y, double right, double size) {
        Legend legend = new Legend(pen, left, y, right, size);
        legend.sample(14, "everyday reach", () -> pen.hatched(legend.x, legend.y - 5.5, 14, 11));
        legend.sample(26, "longest reach", () -> pen.line(legend.at(0), legend.at(26), Ink.line(Palette.MUTED, 1.1).dash("5 3")));
        legend.sample(26, "midline", () -> pen.line(legend.at(0), legend.at(26), Ink.line(Palette.LEADER, .9).dash("10 3 2 3")));
        for (State state : State.values()) {
            legend.sample(11, state.word, () -> Marker.draw(pen, legend.x + 6, legend.y, state, 4.6));
        }
        return legend.y;
    }

    private Point at(double dx) {
        return new Point(x + dx, y);
    }

    private void sample(double width, String word, Runnable drawing) {
        double room = width + 8 + TextWidth.of(word, size, false);
        if (x + room > right && x > left) {
            x = left;
            y += LINE;
        }
        drawing.run();
        pen.text(x + width + 6, y + 4, word, Type.of(size, Palette.MUTED));
        x += room + 16;
    }
}
