package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.Setting.*;

/** Draws the desk of one state with the keys, and the footrest. */
final class DeskArt {

    private final Pen pen;
    private final Frame frame;
    private final Placed at;
    private final Look look;
    private final double edge;
    private final double height;
    private final double depth;

    DeskArt(Pen pen, Frame frame, Placed at, Look look, double edge) {
        this.pen = pen;
        this.frame = frame;
        this.at = at;
        this.look = look.unless(at.settings().measured(DESK_HEIGHT));
        this.edge = edge;
        height = at.settings().of(DESK_HEIGHT);
        depth = at.settings().of(DESK_DEPTH);
    }

    void leg() {
        double under = at.settings().underside();
        double c = edge + depth * .60;
        double joint = 34 + (under - 34) * .55;
        pen.path(frame.box(edge + depth * .22, 0, edge + depth - 30, 34, 14), look.wooden());
        pen.path(frame.box(c - 30, joint, c + 30, under, 2), look.wooden());
        pen.path(frame.box(c - 40, 34, c + 40, joint, 2), look.wooden());
    }

    void top() {
        pen.path(frame.box(edge, at.settings().underside(), edge + depth, height, 8), look.ofTop());
    }

    void keyboard() {
        if (at.settings().laptopKeys()) {
            return;
        }
        double keys = at.settings().of(HOME_ROW);
        double x = at.keysX();
        pen.path(frame.polygon(new Point(x - 62, height), new Point(x + 72, height), new Point(x + 72, height + keys + 2),
                new Point(x - 62, height + Math.max(2, keys - 12))), look.housing());
    }

    void footrest() {
        if (!at.settings().has(FOOTREST_HEIGHT) || at.settings().wheelchair()) {
            return;
        }
        double x = at.joints().ankle().x();
        for (double along : new double[] {-50, 150}) {
            Point q = onPlate(x, along, -16);
            pen.path(frame.polygon(q.plus(-13, 0), q.plus(13, 0), new Point(q.x() + 13, 14), new Point(q.x() - 13, 14)), look.housing());
        }
        pen.path(frame.box(x - 100, 0, x + 215, 14, 5), look.padded());
        pen.path(frame.polygon(onPlate(x, -115, 0), onPlate(x, 235, 0), onPlate(x, 235, -18), onPlate(x, -115, -18)), look.wooden());
    }

    private Point onPlate(double x, double along, double above) {
        double a = Math.toRadians(at.settings().of(FOOTREST_ANGLE));
        return new Point(x + along * Math.cos(a) - above * Math.sin(a),
                at.settings().of(FOOTREST_HEIGHT) + along * Math.sin(a) + above * Math.cos(a));
    }
}
