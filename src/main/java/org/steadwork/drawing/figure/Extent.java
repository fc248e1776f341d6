package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How much of the view plane the frames need, in figure units: the same height for all, a width for each. */
final class Extent {

    private static final double PAD = 2.5;
    private static final double WIDTH_OF_OWN_WINDOW = 60;

    private final double[] lefts;
    private final double[] rights;
    private final Point[] shifts;
    private double bottom = Double.POSITIVE_INFINITY;
    private double top = Double.NEGATIVE_INFINITY;
    private double left = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;

    private Extent(int frames) {
        lefts = new double[frames];
        rights = new double[frames];
        shifts = new Point[frames];
        Arrays.fill(shifts, new Point(0, 0));
    }

    static Extent of(FigureData figure, List<Skeleton> skeletons) {
        Extent extent = new Extent(figure.frames());
        if (figure.values().has("window")) {
            extent.window(figure, skeletons.get(0));
        } else {
            extent.fit(figure, skeletons);
        }
        return extent;
    }

    /** A close-up: the same window for every frame, about a point of the first. */
    private void window(FigureData figure, Skeleton first) {
        double[] w = figure.values().numbers("window");
        left = w[0];
        bottom = w[1];
        right = w[2];
        top = w[3];
        for (int i = 0; i < shifts.length; i++) {
            lefts[i] = left;
            rights[i] = right;
            if (figure.values().has("about")) {
                shifts[i] = figure.camera(i).project(first.joints().at(figure.values().raw("about")));
            }
        }
    }

    private void fit(FigureData figure, List<Skeleton> skeletons) {
        double[] pad = figure.values().raw("pad") instanceof List<?> four ? Values.numbers("pad", four) : new double[] {PAD, PAD, PAD, PAD};
        for (int i = 0; i < lefts.length; i++) {
            if (figure.poses().get(i).values().has("window")) {
                rights[i] = figure.values().number("own_width", WIDTH_OF_OWN_WINDOW);
                continue;
            }
            List<Point> points = points(figure, i, skeletons.get(i));
            lefts[i] = points.stream().mapToDouble(Point::x).min().orElseThrow() - pad[0];
            rights[i] = points.stream().mapToDouble(Point::x).max().orElseThrow() + pad[2];
            left = Math.min(left, lefts[i]);
            right = Math.max(right, rights[i]);
            bottom = Math.min(bottom, points.stream().mapToDouble(Point::y).min().orElseThrow());
            top = Math.max(top, points.stream().mapToDouble(Point::y).max().orElseThrow());
        }
        bottom -= pad[1];
        top += pad[3];
    }

    private static List<Point> points(FigureData figure, int frame, Skeleton skeleton) {
        Camera camera = figure.camera(frame);
        List<String> only = figure.values().texts("only");
        List<Point> points = new ArrayList<>();
        for (Segment segment : skeleton.joints().segments()) {
            if (only.isEmpty() || only.contains(segment.layer())) {
                for (Ball ball : segment.balls()) {
                    Point p = camera.project(ball.centre());
                    points.add(p.plus(ball.radius(), ball.radius()));
                    points.add(p.plus(-ball.radius(), -ball.radius()));
                }
            }
        }
        for (Values prop : figure.props(frame)) {
            if (!prop.text("type", "").equals("floor") && !prop.flag("free", false)) {
                points.addAll(points(prop, skeleton.joints(), camera));
            }
        }
        return points;
    }

    private static List<Point> points(Values prop, Joints joints, Camera camera) {
        List<Point> points = new ArrayList<>();
        List<Box> boxes = prop.text("type", "").equals("crate") ? List.of(Box.crate(prop, joints)) : Box.of(prop);
        for (Box box : boxes) {
            for (int corner = 0; corner < 8; corner++) {
                points.add(camera.project(box.corner(corner)));
            }
        }
        return points;
    }

    double[] widths() {
        double[] widths = new double[lefts.length];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = width(i);
        }
        return widths;
    }

    double width(int frame) {
        return rights[frame] - lefts[frame];
    }

    double left(int frame) {
        return lefts[frame];
    }

    double left() {
        return left;
    }

    double width() {
        return right - left;
    }

    double bottom() {
        return bottom;
    }

    double height() {
        return top - bottom;
    }

    Point shift(int frame) {
        return shifts[frame];
    }
}
