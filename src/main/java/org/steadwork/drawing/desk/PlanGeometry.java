package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.List;

/** Where things are and how far off, worked out from one state of a plan. */
final class PlanGeometry {

    /** The eyes before the line between the shoulders, in mm. */
    static final Point EYE = new Point(0, 95);

    /**
     * A screen in its place.
     *
     * @param left  end of its front, as is {@code right}
     * @param angle of its middle from straight ahead, in degrees, positive to the right
     * @param off   its front off square to the sight line, in degrees
     */
    record Face(PlanScreen screen, Point left, Point right, double angle, double off) {

        Point middle() {
            return left.towards(right, .5);
        }

        double distance() {
            return EYE.distance(middle());
        }

        /** From the front to the back, one mm long. */
        Point backwards() {
            double length = left.distance(right);
            return new Point(-(right.y() - left.y()) / length, (right.x() - left.x()) / length);
        }
    }

    final PlanBody body;
    final PlanState state;
    final List<Face> faces = new ArrayList<>();

    PlanGeometry(PlanBody body, PlanState state) {
        this.body = body;
        this.state = state;
        state.screens().forEach(screen -> faces.add(face(screen)));
    }

    private static Face face(PlanScreen screen) {
        int side = screen.offset() > 0 ? 1 : -1;
        double turn = Math.toRadians(screen.turn());
        double y = EYE.y() + screen.distance();
        // along the front, away from the midline; turning in brings the outer end nearer
        Point outward = new Point(side * Math.cos(turn), -Math.sin(turn));
        double half = screen.width() / 2;
        Point inner = screen.touching() ? new Point(screen.offset() - side * half, y)
                : new Point(screen.offset() - half * outward.x(), y - half * outward.y());
        Point outer = inner.plus(screen.width() * outward.x(), screen.width() * outward.y());
        Point left = side > 0 ? inner : outer;
        Point right = side > 0 ? outer : inner;
        Point middle = left.towards(right, .5);
        double angle = Math.toDegrees(Math.atan2(middle.x() - EYE.x(), middle.y() - EYE.y()));
        double slope = Math.toDegrees(Math.atan2(right.y() - left.y(), right.x() - left.x()));
        return new Face(screen, left, right, angle, Math.abs(angle + slope));
    }

    /** How far a thing lies outside the line of the shoulder on its side, in mm; negative inside. */
    double outside(PlanThing thing) {
        return Math.abs(thing.aside()) - body.half();
    }

    double fromElbow(PlanThing thing) {
        return body.elbow(side(thing)).distance(thing.middle());
    }

    double fromShoulder(PlanThing thing) {
        return body.shoulder(side(thing)).distance(thing.middle());
    }

    static double angle(PlanThing thing) {
        return Math.toDegrees(Math.atan2(thing.aside() - EYE.x(), thing.ahead() - EYE.y()));
    }

    static int side(PlanThing thing) {
        return thing.aside() < 0 ? -1 : 1;
    }

    /** Where the head turns to, in degrees, positive to the right: the middle of the main screens. */
    double lookingAt() {
        return faces.stream().filter(face -> face.screen().main()).mapToDouble(Face::angle).average().orElse(0);
    }
}
