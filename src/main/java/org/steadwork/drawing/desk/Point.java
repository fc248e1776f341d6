package org.steadwork.drawing.desk;

/** A point in millimetres of the work place (x forward, y up) or in units of the drawing (x right, y down). */
record Point(double x, double y) {

    Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** The point at a share of the way to another; 0 here, 1 there. */
    Point towards(Point other, double share) {
        return new Point(x + share * (other.x - x), y + share * (other.y - y));
    }

    /** Turned about a centre; positive turns a person who faces +x forward (clockwise with y up). */
    Point nod(Point centre, double degrees) {
        double a = -Math.toRadians(degrees);
        double dx = x - centre.x;
        double dy = y - centre.y;
        return new Point(centre.x + dx * Math.cos(a) - dy * Math.sin(a), centre.y + dx * Math.sin(a) + dy * Math.cos(a));
    }

    double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
