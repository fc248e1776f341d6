package org.steadwork.drawing.desk;

import java.util.List;

/** The person from above: trunk, arms to keys and pointer, head turned to the main screen. */
final class PlanPerson {

    private static final double HEAD_WIDE = 77;
    private static final double HEAD_LONG = 97;
    private static final double TRUNK_DEEP = 112;
    private static final double HAND = 95;

    private final Pen pen;
    private final Frame frame;
    private final PlanGeometry geometry;
    private final Look look;

    PlanPerson(Pen pen, Frame frame, PlanGeometry geometry, Look look) {
        this.pen = pen;
        this.frame = frame;
        this.geometry = geometry;
        this.look = look;
    }

    void draw() {
        Ink arm = look.person().fill(look.arm());
        Ink trunk = look.person().fill(look.body());
        PlanThing pointer = geometry.state.pointer();
        PlanThing keys = geometry.state.keyboard();
        int pointing = pointer == null ? 0 : PlanGeometry.side(pointer);
        for (int side : new int[] {-1, 1}) {
            Point hand = side == pointing ? pointer.middle().plus(0, -40) : keys.middle().plus(side * Math.min(90, keys.width() / 4), -20);
            Point elbow = follow(geometry.body.elbow(side), hand);
            Point wrist = hand.towards(elbow, Math.min(.5, HAND / Math.max(1, hand.distance(elbow))));
            pen.path(limb(elbow, wrist, 42, 28), arm);
            pen.path(limb(wrist, hand, 30, 24), arm);
            pen.path(limb(geometry.body.shoulder(side), elbow, 56, 44), trunk);
        }
        pen.path(ellipse(new Point(0, -8), geometry.body.half(), TRUNK_DEEP, 0), trunk);
        head(trunk, arm);
    }

    /** Where the upper arm must leave the trunk because the forearm alone does not reach. */
    private Point follow(Point elbow, Point hand) {
        double short_ = elbow.distance(hand) - (geometry.body.everydayReach() - 50);
        return short_ > 0 ? elbow.towards(hand, short_ / elbow.distance(hand)) : elbow;
    }

    private void head(Ink nose, Ink head) {
        double look = geometry.lookingAt();
        Point neck = new Point(0, 15);
        pen.path(Pen.outline(List.of(turned(neck, -20, 92, look), turned(neck, 0, 122, look), turned(neck, 20, 92, look))), nose);
        pen.path(ellipse(neck, HEAD_WIDE, HEAD_LONG, look), head);
        pen.circle(frame.at(PlanGeometry.EYE), 2.4, Ink.filled(this.look.colour()));
    }

    private Point turned(Point centre, double x, double y, double degrees) {
        return frame.at(centre.plus(x, y).nod(centre, degrees));
    }

    /** An ellipse with its long axis turned to the right by so many degrees. */
    private String ellipse(Point centre, double wide, double long_, double degrees) {
        Point top = turned(centre, 0, long_, degrees);
        Point bottom = turned(centre, 0, -long_, degrees);
        String arc = "A" + Pen.number(frame.length(wide)) + " " + Pen.number(frame.length(long_)) + " " + Pen.number(degrees) + " 0 1 ";
        return "M" + Frame.p(top.x(), top.y()) + arc + Frame.p(bottom.x(), bottom.y()) + arc + Frame.p(top.x(), top.y()) + "Z";
    }

    /** The outline of a tapered limb, round at both ends; radii in mm. */
    private String limb(Point from, Point to, double r1, double r2) {
        return limb(frame, from, to, r1, r2);
    }

    static String limb(Frame frame, Point from, Point to, double r1, double r2) {
        Point a = frame.at(from);
        Point b = frame.at(to);
        double angle = Math.atan2(b.y() - a.y(), b.x() - a.x());
        double nx = Math.sin(angle);
        double ny = -Math.cos(angle);
        double ra = frame.length(r1);
        double rb = frame.length(r2);
        return "M" + Frame.p(a.x() + nx * ra, a.y() + ny * ra) + "L" + Frame.p(b.x() + nx * rb, b.y() + ny * rb)
                + "A" + Pen.number(rb) + " " + Pen.number(rb) + " 0 0 1 " + Frame.p(b.x() - nx * rb, b.y() - ny * rb)
                + "L" + Frame.p(a.x() - nx * ra, a.y() - ny * ra)
                + "A" + Pen.number(ra) + " " + Pen.number(ra) + " 0 0 1 " + Frame.p(a.x() + nx * ra, a.y() + ny * ra) + "Z";
    }
}
