package org.steadwork.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Lines and dots that fill an outline, as plain path data. A drawing for print carries them instead of a pattern fill and a
 * clip, which a PDF writer would turn into bitmaps with transparency.
 */
final class Hatch {

    private static final double FLATNESS = 0.4;
    private static final Pattern SPACE = Pattern.compile(" +");

    private final Path2D outline;

    /** Takes path data of absolute M, C and Z. */
    Hatch(String path) {
        outline = parse(path);
    }

    /**
     * Returns parallel lines inside the outline.
     *
     * @param degrees slope of the lines, clockwise on screen from level
     * @param spacing between lines, units of the drawing, above 0
     */
    String lines(double degrees, double spacing) {
        AffineTransform level = AffineTransform.getRotateInstance(Math.toRadians(-degrees));
        AffineTransform back = AffineTransform.getRotateInstance(Math.toRadians(degrees));
        Path2D turned = new Path2D.Double(outline, level);
        Rectangle2D box = turned.getBounds2D();
        StringBuilder path = new StringBuilder();
        for (double y = firstOnGrid(box.getMinY(), spacing); y < box.getMaxY(); y += spacing) {
            List<Double> crossings = crossings(turned, y);
            for (int i = 0; i + 1 < crossings.size(); i += 2) {
                append(path, 'M', back.transform(new Point2D.Double(crossings.get(i), y), null));
                append(path, 'L', back.transform(new Point2D.Double(crossings.get(i + 1), y), null));
            }
        }
        return path.toString();
    }

    /** Returns whole dots inside the outline on a grid turned by 45 degrees; lengths are units of the drawing, above 0. */
    String dots(double spacing, double radius) {
        AffineTransform turn = AffineTransform.getRotateInstance(Math.PI / 4);
        Rectangle2D box = outline.getBounds2D();
        double reach = Math.hypot(box.getWidth(), box.getHeight()) / 2;
        Point2D middle = AffineTransform.getRotateInstance(-Math.PI / 4)
                .transform(new Point2D.Double(box.getCenterX(), box.getCenterY()), null);
        StringBuilder path = new StringBuilder();
        for (double v = firstOnGrid(middle.getY() - reach, spacing); v < middle.getY() + reach; v += spacing) {
            for (double u = firstOnGrid(middle.getX() - reach, spacing); u < middle.getX() + reach; u += spacing) {
                Point2D dot = turn.transform(new Point2D.Double(u, v), null);
                if (holds(dot, radius)) {
                    append(path, 'M', new Point2D.Double(dot.getX() - radius, dot.getY()));
                    String r = SvgMarkup.number(radius);
                    String d = SvgMarkup.number(2 * radius);
                    path.append('a').append(r).append(' ').append(r).append(" 0 1 0 ").append(d).append(" 0a").append(r)
                            .append(' ').append(r).append(" 0 1 0 -").append(d).append(" 0Z");
                }
            }
        }
        return path.toString();
    }

    private boolean holds(Point2D dot, double radius) {
        for (int i = 0; i < 8; i++) {
            double angle = i * Math.PI / 4;
            if (!outline.contains(dot.getX() + radius * Math.cos(angle), dot.getY() + radius * Math.sin(angle))) {
                return false;
            }
        }
        return true;
    }

    private static double firstOnGrid(double from, double spacing) {
        return Math.ceil(from / spacing) * spacing;
    }

    private static void append(StringBuilder path, char command, Point2D to) {
        path.append(command).append(SvgMarkup.number(to.getX())).append(' ').append(SvgMarkup.number(to.getY()));
    }

    /** Returns where a level line meets the outline, from left to right. */
    private static List<Double> crossings(Path2D shape, double y) {
        List<Double> found = new ArrayList<>();
        double[] at = new double[6];
        Point2D start = null;
        Point2D from = null;
        for (PathIterator step = shape.getPathIterator(null, FLATNESS); !step.isDone(); step.next()) {
            int kind = step.currentSegment(at);
            Point2D to = kind == PathIterator.SEG_CLOSE ? start : new Point2D.Double(at[0], at[1]);
            if (kind == PathIterator.SEG_MOVETO) {
                start = to;
            } else if ((from.getY() <= y) != (to.getY() <= y)) {
                found.add(from.getX() + (y - from.getY()) * (to.getX() - from.getX()) / (to.getY() - from.getY()));
            }
            from = to;
        }
        Collections.sort(found);
        return found;
    }

    private static Path2D parse(String path) {
        Path2D shape = new Path2D.Double();
        for (String part : path.split("(?=[MCZ])")) {
            double[] n = SPACE.splitAsStream(part.substring(1)).filter(text -> !text.isEmpty()).mapToDouble(Double::parseDouble).toArray();
            switch (part.charAt(0)) {
                case 'M' -> shape.moveTo(n[0], n[1]);
                case 'C' -> shape.curveTo(n[0], n[1], n[2], n[3], n[4], n[5]);
                default -> shape.closePath();
            }
        }
        return shape;
    }
}
