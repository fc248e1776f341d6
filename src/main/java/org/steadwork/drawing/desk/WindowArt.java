package org.steadwork.drawing.desk;

/** The window of a plan on its side of the room, with arrows for the light. */
final class WindowArt {

    private static final double THICK = 34;
    private static final double LONGEST = 360;
    private static final double ROOM = 95;
    private static final String LIGHT = "#eef1f2";

    private final Pen pen;
    private final Frame frame;
    private final PlanExtent extent;
    private final Look look;

    WindowArt(Pen pen, Frame frame, PlanExtent extent, Look look) {
        this.pen = pen;
        this.frame = frame;
        this.extent = extent;
        this.look = look;
    }

    void draw(PlanWindow window) {
        boolean beside = window.where() == PlanWindow.Where.LEFT || window.where() == PlanWindow.Where.RIGHT;
        int side = window.where() == PlanWindow.Where.LEFT ? -1 : 1;
        double angle = Math.toRadians(window.offParallel());
        double half = beside ? Math.min(LONGEST, ROOM / Math.max(.01, Math.sin(angle))) : Math.min(LONGEST, 60 / Math.max(.01, Math.cos(angle)));
        Point middle = switch (window.where()) {
            case LEFT -> new Point(extent.left() + 115, 250);
            case RIGHT -> new Point(extent.right() - 115, 250);
            case AHEAD -> new Point(extent.left() * .45, extent.far() - 75);
            case BEHIND -> new Point(extent.left() * .45, extent.near() + 75);
        };
        Point along = beside ? new Point(-side * Math.sin(angle), Math.cos(angle)) : new Point(Math.sin(angle), Math.cos(angle));
        // into the room: towards the person
        Point in = new Point(along.y(), -along.x());
        if (in.x() * -middle.x() + in.y() * -middle.y() < 0) {
            in = new Point(-in.x(), -in.y());
        }
        Point a = middle.plus(-half * along.x(), -half * along.y());
        Point b = middle.plus(half * along.x(), half * along.y());
        pen.path(frame.polygon(a, b, b.plus(THICK * in.x(), THICK * in.y()), a.plus(THICK * in.x(), THICK * in.y())),
                look.edge().fill(look.present() ? Palette.PAPER : LIGHT));
        pen.line(frame.at(a.plus(THICK / 2 * in.x(), THICK / 2 * in.y())), frame.at(b.plus(THICK / 2 * in.x(), THICK / 2 * in.y())), look.edge().dash(null).width(.8));
        for (double share : new double[] {.2, .5, .8}) {
            Point from = a.towards(b, share).plus(60 * in.x(), 60 * in.y());
            pen.dart(frame.at(from), frame.at(from.plus(100 * in.x(), 100 * in.y())), Ink.line(Palette.LEADER, .9), 5);
        }
        Point low = a.y() < b.y() ? a : b;
        Point word = beside ? frame.at(middle.x(), low.y()).plus(0, 14) : frame.at(b.x() > a.x() ? b : a).plus(8, 4);
        pen.text(word.x(), word.y(), "window", new Type(10.5, Palette.MUTED, false, false, beside ? "middle" : "start", true));
    }
}
