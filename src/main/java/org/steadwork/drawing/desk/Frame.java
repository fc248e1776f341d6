package org.steadwork.drawing.desk;

import java.util.List;

/**
 * Maps millimetres of the work place to units of the drawing, with one factor for both directions.
 *
 * @param scale   units per mm
 * @param originX where x = 0 is drawn
 * @param floorY  where the floor is drawn
 */
record Frame(double scale, double originX, double floorY) {

    Point at(double x, double y) {
        return new Point(x(x), y(y));
    }

    Point at(Point p) {
        return at(p.x(), p.y());
    }

    double x(double mm) {
        return originX + mm * scale;
    }

    double y(double mm) {
        return floorY - mm * scale;
    }

    double length(double mm) {
        return mm * scale;
    }

    /** Widths of tubes grow with the drawing; 0.35 is the scale they were drawn at. */
    double tube(double width) {
        return width * scale / .35;
    }

    /** A box with round corners, from corner to corner in mm. */
    String box(double x0, double y0, double x1, double y1, double corner) {
        double left = x(x0);
        double right = x(x1);
        double top = y(y1);
        double bottom = y(y0);
        double r = Math.min(length(corner), Math.min(Math.abs(right - left), Math.abs(bottom - top)) / 2);
        return "M" + p(left + r, top) + "H" + n(right - r) + "Q" + p(right, top) + " " + p(right, top + r) + "V" + n(bottom - r)
                + "Q" + p(right, bottom) + " " + p(right - r, bottom) + "H" + n(left + r) + "Q" + p(left, bottom) + " " + p(left, bottom - r)
                + "V" + n(top + r) + "Q" + p(left, top) + " " + p(left + r, top) + "Z";
    }

    String polygon(Point... corners) {
        return Pen.outline(List.of(corners).stream().map(this::at).toList()) + "Z";
    }

    Curve curveFrom(Point start) {
        return new Curve(this, at(start));
    }

    private static String n(double value) {
        return Pen.number(value);
    }

    static String p(double x, double y) {
        return n(x) + " " + n(y);
    }

    /** A path in mm of straight and bent pieces. */
    static final class Curve {
        private final Frame frame;
        private final StringBuilder d;

        private Curve(Frame frame, Point start) {
            this.frame = frame;
            d = new StringBuilder("M").append(p(start.x(), start.y()));
        }

        Curve to(double x, double y) {
            d.append('L').append(at(x, y));
            return this;
        }

        Curve bend(Point control, Point end) {
            d.append('Q').append(at(control.x(), control.y())).append(' ').append(at(end.x(), end.y()));
            return this;
        }

        Curve bend(Point control1, Point control2, Point end) {
            d.append('C').append(at(control1.x(), control1.y())).append(' ').append(at(control2.x(), control2.y())).append(' ')
                    .append(at(end.x(), end.y()));
            return this;
        }

        private String at(double x, double y) {
            Point q = frame.at(x, y);
            return p(q.x(), q.y());
        }

        String open() {
            return d.toString();
        }

        String closed() {
            return d + "Z";
        }
    }
}
