package org.steadwork.drawing.figure;

/** A ball as it lies in the picture. */
record Circle(double x, double y, double r) {

    boolean covers(Circle o) {
        return Math.hypot(x - o.x, y - o.y) + o.r <= r + 1e-6;
    }
}
