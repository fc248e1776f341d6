package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.Setting.*;

import java.util.List;

/** Draws the seat of one state: base, back rest, pan and arm rest, or a wheelchair's frame. */
final class ChairArt {

    private final Pen pen;
    private final Frame frame;
    private final Placed at;
    private final Look look;
    private final double seat;
    private final double x;

    ChairArt(Pen pen, Frame frame, Placed at, Look look) {
        this.pen = pen;
        this.frame = frame;
        this.at = at;
        this.look = look.unless(at.settings().measured(SEAT_HEIGHT));
        seat = at.settings().of(SEAT_HEIGHT);
        x = at.shift();
    }

    /** What lies behind the person; as an outline over the proposed chair only the rest, which is what moves. */
    void behind(boolean outlineOnly) {
        if (at.settings().wheelchair()) {
            wheelchair();
            rest();
            return;
        }
        if (!outlineOnly) {
            base();
            bracket();
        }
        rest();
    }

    private void base() {
        double c = 215 + x;
        double column = Math.max(170, Math.min(230, seat - 170));
        for (double dx : new double[] {-176, 176}) {
            pen.circle(frame.at(c + dx, 26), frame.length(26), look.housing());
        }
        for (double dx : new double[] {-285, 285}) {
            pen.path(frame.polygon(new Point(c, 118), new Point(c + dx, 72), new Point(c + dx * 1.03, 54), new Point(c, 72)), look.padded());
            pen.circle(frame.at(c + dx, 27), frame.length(27), look.housing());
        }
        pen.path(frame.polygon(new Point(c - 22, 112), new Point(c + 22, 112), new Point(c + 15, 50), new Point(c - 15, 50)), look.padded());
        pen.circle(frame.at(c, 26), frame.length(26), look.housing());
        pen.path(frame.box(c - 26, 72, c + 26, column, 6), look.housing());
        pen.path(frame.box(c - 15, column, c + 15, seat - 100, 3), look.padded());
        pen.path(frame.polygon(new Point(c - 95, seat - 60), new Point(c + 115, seat - 60), new Point(c + 60, seat - 104),
                new Point(c - 55, seat - 104)), look.housing());
    }

    private void wheelchair() {
        double plate = at.settings().has(FOOTREST_HEIGHT) ? at.settings().of(FOOTREST_HEIGHT) : 60;
        double foot = at.joints().ankle().x();
        double depth = at.settings().of(SEAT_DEPTH);
        tube(new Point(x + 20, seat - 60), new Point(x + 60, 300), new Point(x + 330, 150), new Point(x + 380, seat - 55));
        tube(new Point(x + 380, seat - 55), new Point(x + depth + 10, seat - 90), new Point(foot - 60, plate + 10));
        pen.path(frame.polygon(new Point(foot - 105, plate), new Point(foot + 150, plate), new Point(foot + 150, plate - 14),
                new Point(foot - 105, plate - 14)), look.housing());
        pen.circle(frame.at(x + 345, 72), frame.length(72), look.housing());
        pen.circle(frame.at(x + 60, 305), frame.length(305), look.edge().width(frame.tube(3.2)));
        pen.circle(frame.at(x + 60, 305), frame.length(278), look.edge().width(frame.tube(1)));
        pen.circle(frame.at(x + 60, 305), frame.length(26), look.housing());
    }

    private void tube(Point... course) {
        String d = Pen.outline(List.of(course).stream().map(frame::at).toList());
        pen.path(d, look.edge().width(frame.tube(8)).dash(null));
        pen.path(d, look.edge().stroke(look.dark().equals("none") ? Palette.PAPER : look.dark()).width(frame.tube(6)).dash(null));
    }

    private Point rest(double y, double forward) {
        return new Point(at.backRestAt(y) + forward, y);
    }

    /** The arm that carries the back rest. */
    private void bracket() {
        double lumbar = seat + at.settings().of(LUMBAR);
        Point a = frame.at(x + 130, seat - 78);
        Point b = frame.at(rest(lumbar + 40, -48));
        Point c1 = frame.at(x - 90, seat - 90);
        Point c2 = frame.at(rest(seat + 60, -80));
        double t = frame.tube(1);
        pen.path("M" + Frame.p(a.x(), a.y()) + "C" + Frame.p(c1.x(), c1.y()) + " " + Frame.p(c2.x(), c2.y()) + " " + Frame.p(b.x(), b.y())
                + "L" + Frame.p(b.x() + 7 * t, b.y()) + "C" + Frame.p(c2.x() + 8 * t, c2.y()) + " " + Frame.p(c1.x() + 6 * t, c1.y() - 8 * t)
                + " " + Frame.p(a.x(), a.y() - 8 * t) + "Z", look.housing());
    }

    private void rest() {
        double low = seat + 95;
        double high = seat + at.settings().of(BACK_HEIGHT);
        double lumbar = seat + at.settings().of(LUMBAR);
        double middle = (lumbar + high) / 2;
        pen.path(frame.curveFrom(rest(low, -6))
                .bend(rest(low + 40, 16), rest(lumbar, 6))
                .bend(rest(middle, -8), rest(high - 20, -4))
                .bend(rest(high + 8, -6), rest(high + 4, -26))
                .bend(rest(high + 4, -48), rest(high - 40, -46))
                .bend(rest(middle, -52), rest(lumbar, -38))
                .bend(rest(low + 20, -34), rest(low - 4, -32))
                .bend(rest(low - 22, -20), rest(low, -6)).closed(), look.padded());
        if (at.settings().has(CUSHION)) {
            cushion(at.settings().of(CUSHION));
        }
    }

    private void cushion(double thickness) {
        double low = seat + 20;
        double high = seat + 330;
        pen.path(frame.curveFrom(rest(low + 14, 0))
                .bend(rest(low - 4, 2), rest(low - 2, thickness * .5))
                .bend(rest(low, thickness), rest(low + 46, thickness))
                .bend(rest((low + high) / 2, thickness * 1.1), rest(high - 60, thickness * .86))
                .bend(rest(high - 6, thickness * .75), rest(high, thickness * .36))
                .bend(rest(high + 2, 0), rest(high - 16, 0)).closed(),
                look.person().fill(look.present() ? look.chair() : "#ece6f0").width(1.1));
    }

    void pan() {
        double depth = at.settings().of(SEAT_DEPTH);
        Look pan = look.unless(at.settings().measured(SEAT_DEPTH));
        pen.path(frame.curveFrom(new Point(x - 25, seat)).to(x + depth - 48, seat)
                .bend(new Point(x + depth, seat), new Point(x + depth, seat - 36))
                .bend(new Point(x + depth, seat - 62), new Point(x + depth - 44, seat - 62))
                .to(x, seat - 62)
                .bend(new Point(x - 42, seat - 62), new Point(x - 42, seat - 32))
                .bend(new Point(x - 42, seat), new Point(x - 25, seat)).closed(), pan.padded());
    }

    void armrest() {
        if (!at.settings().has(ARMREST)) {
            return;
        }
        double y = seat + at.settings().of(ARMREST);
        pen.path(frame.polygon(new Point(x + 158, seat - 40), new Point(x + 186, seat - 40), new Point(x + 180, y - 24),
                new Point(x + 152, y - 24)), look.housing());
        pen.path(frame.box(x + 22, y - 28, x + 262, y, 13), look.padded());
    }
}
