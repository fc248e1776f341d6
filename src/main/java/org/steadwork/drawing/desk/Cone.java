package org.steadwork.drawing.desk;

/** A tapered capsule: two circles and what lies between their tangents; limbs are made of them. All in mm. */
record Cone(Point a, Point b, double radiusA, double radiusB) {

    static Cone ball(Point centre, double radius) {
        return new Cone(centre, centre, radius, radius);
    }

    /** Signed distance to the surface, negative inside. */
    double distance(double x, double y) {
        double bx = b.x() - a.x();
        double by = b.y() - a.y();
        double px = x - a.x();
        double py = y - a.y();
        double length = Math.hypot(bx, by);
        if (length < 1e-3) {
            return Math.hypot(px, py) - Math.max(radiusA, radiusB);
        }
        double along = (px * bx + py * by) / length;
        double aside = Math.abs(px * by - py * bx) / length;
        double sine = (radiusA - radiusB) / length;
        if (Math.abs(sine) >= 1) {
            return Math.min(Math.hypot(aside, along) - radiusA, Math.hypot(aside, along - length) - radiusB);
        }
        double cosine = Math.sqrt(1 - sine * sine);
        double onFlank = cosine * along - sine * aside;
        if (onFlank < 0) {
            return Math.hypot(aside, along) - radiusA;
        }
        if (onFlank > cosine * length) {
            return Math.hypot(aside, along - length) - radiusB;
        }
        return aside * cosine + along * sine - radiusA;
    }

    boolean near(double x, double y, double margin) {
        return x >= left() - margin && x <= right() + margin && y >= bottom() - margin && y <= top() + margin;
    }

    double left() {
        return Math.min(a.x() - radiusA, b.x() - radiusB);
    }

    double right() {
        return Math.max(a.x() + radiusA, b.x() + radiusB);
    }

    double bottom() {
        return Math.min(a.y() - radiusA, b.y() - radiusB);
    }

    double top() {
        return Math.max(a.y() + radiusA, b.y() + radiusB);
    }
}
