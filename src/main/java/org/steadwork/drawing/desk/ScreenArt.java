package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.Setting.*;

/** Draws the screen of one state: on its foot, or a laptop, on a riser where it stands higher than the desk. */
final class ScreenArt {

    private final Pen pen;
    private final Frame frame;
    private final Placed at;
    private final Look look;
    private final ScreenFace face;
    private final double desk;
    private final double half;

    ScreenArt(Pen pen, Frame frame, Placed at, Look look) {
        this.pen = pen;
        this.frame = frame;
        this.at = at;
        this.look = look.unless(at.settings().measured(SCREEN_TOP) && at.settings().measured(SCREEN_DISTANCE));
        face = at.face();
        desk = at.settings().of(DESK_HEIGHT);
        half = at.settings().of(SCREEN_HEIGHT) / 2;
    }

    void draw() {
        if (at.settings().laptop()) {
            laptop();
        } else {
            onFoot();
        }
        pen.line(frame.at(face.at(half, -3)), frame.at(face.at(-half, -3)),
                look.person().width(2.2).dash(look.person().dash() == null || look.person().dash().equals(Ink.DOTS) ? look.person().dash() : "5 3"));
    }

    private void onFoot() {
        double x = face.middle().x();
        Point neck = face.at(-10, 34);
        pen.path(frame.box(x + 20, desk, x + 215, desk + 13, 5), look.housing());
        pen.path(frame.polygon(new Point(x + 112, desk + 13), new Point(x + 142, desk + 13), neck.plus(52, 16), neck.plus(30, 16)), look.padded());
        pen.path(frame.polygon(face.at(24, 26), face.at(24, 40), neck.plus(56, 24), neck.plus(56, -14), face.at(-46, 40), face.at(-46, 26)),
                look.padded());
        pen.path(frame.polygon(face.at(half + 12, 0), face.at(half + 12, 26), face.at(-half - 16, 26), face.at(-half - 16, 0)), look.housing());
    }

    private void laptop() {
        double foot = at.settings().of(SCREEN_TOP) - at.settings().of(BUILT_IN_TOP);
        Point hinge = face.hingeAt(foot + 20);
        double down = (hinge.y() - face.middle().y()) / Math.cos(face.tilt());
        double x = hinge.x();
        if (foot > desk + 3) {
            pen.path(frame.polygon(new Point(x - 190, desk), new Point(x + 40, desk), new Point(x + 40, desk + 12), new Point(x - 190, desk + 12)),
                    look.housing());
            pen.path(frame.polygon(new Point(x - 10, desk + 12), new Point(x + 24, desk + 12), new Point(x - 90, foot - 10),
                    new Point(x - 124, foot - 10)), look.padded());
            pen.path(frame.box(x - 225, foot - 12, x + 12, foot, 4), look.housing());
        }
        pen.path(frame.box(x - 238, foot, x + 8, foot + 20, 6), look.padded());
        pen.path(frame.polygon(face.at(half + 10, 0), face.at(half + 10, 12), face.at(down - 2, 12), face.at(down - 2, 0)), look.housing());
    }
}
