package org.steadwork.drawing.figure;

/** A point of the picture or of the view plane. */
record Point(double x, double y) {

    Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    double distance(Point o) {
        return Math.hypot(x - o.x, y - o.y);
    }

    Point towards(Point o, double share) {
        return new Point(x + (o.x - x) * share, y + (o.y - y) * share);
    }
}
