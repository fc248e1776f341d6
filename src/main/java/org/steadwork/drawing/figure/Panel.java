package org.steadwork.drawing.figure;

import java.util.List;

/**
 * The box one frame is drawn in: maps the figure's space to the picture.
 *
 * @param scale     picture units per unit of the figure
 * @param originX   picture x of the figure's origin
 * @param originY   picture y of the figure's origin
 * @param lineWidth half of the outline's stroke, in picture units
 */
record Panel(Camera camera, double scale, double originX, double originY, double lineWidth) {

    Point at(Vec3 v) {
        return plane(camera.project(v));
    }

    /** A point of the view plane, in figure units, y up. */
    Point plane(Point p) {
        return new Point(originX + p.x() * scale, originY - p.y() * scale);
    }

    Circle circle(Ball ball) {
        Point p = at(ball.centre());
        return new Circle(p.x(), p.y(), ball.radius() * scale);
    }

    String outline(List<Ball> balls) {
        return Outline.path(balls.stream().map(this::circle).toList());
    }

    /** The stroke that, half hidden by the fill, leaves the outline. */
    double outlineStroke() {
        return 2 * lineWidth;
    }
}
