package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The zones of reach on the desk: everyday reach hatched, longest reach as a dashed line. */
final class ReachZones {

    private static final int STEPS = 48;
    private static final double HATCH = 5;

    private final Pen pen;
    private final Frame frame;
    private final PlanBody body;
    private final double edge;
    private final double halfWidth;
    private final double back;

    ReachZones(Pen pen, Frame frame, PlanBody body, double edge, double deskWidth, double deskDepth) {
        this.pen = pen;
        this.frame = frame;
        this.body = body;
        this.edge = edge;
        halfWidth = deskWidth / 2;
        back = edge + deskDepth;
    }

    void draw() {
        List<Point> everyday = zone(body.elbow(1), body.everydayReach());
        if (everyday.size() > 2) {
            List<Point> onPage = everyday.stream().map(frame::at).toList();
            pen.polygon(onPage, new Ink(Palette.BAND, Palette.GREEN, .9, null));
            hatch(onPage);
        }
        List<Point> longest = zone(body.shoulder(1), body.longestReach());
        if (longest.size() > 2) {
            pen.path(Pen.outline(longest.stream().map(frame::at).toList()), Ink.line(Palette.MUTED, 1.1).dash("5 3"));
        }
    }

    /** What either arm reaches on the desk, from the left end of its edge over the far side to the right end. */
    private List<Point> zone(Point right, double reach) {
        List<Point> half = new ArrayList<>();
        double ahead = edge - right.y();
        if (ahead >= reach) {
            return half;
        }
        double from = Math.asin(ahead / reach);
        // from beside the body to where the two arms meet on the midline
        double to = right.x() < reach ? Math.acos(-right.x() / reach) : Math.PI / 2;
        for (int i = 0; i <= STEPS; i++) {
            double angle = from + (to - from) * i / STEPS;
            Point p = right.plus(reach * Math.cos(angle), reach * Math.sin(angle));
            half.add(new Point(Math.min(Math.max(0, p.x()), halfWidth), Math.min(Math.max(edge, p.y()), back)));
        }
        List<Point> whole = new ArrayList<>(half.stream().map(p -> new Point(-p.x(), p.y())).toList());
        Collections.reverse(half);
        whole.addAll(half);
        return whole;
    }

    /** Slanting lines within a shape, cut at its edges: no pattern, so that every reader of SVG shows them. */
    private void hatch(List<Point> shape) {
        double low = shape.stream().mapToDouble(p -> p.x() + p.y()).min().orElse(0);
        double high = shape.stream().mapToDouble(p -> p.x() + p.y()).max().orElse(0);
        StringBuilder d = new StringBuilder();
        for (double sum = low + HATCH; sum < high; sum += HATCH * Math.sqrt(2)) {
            List<Double> cuts = new ArrayList<>();
            for (int i = 0; i < shape.size(); i++) {
                Point a = shape.get(i);
                Point b = shape.get((i + 1) % shape.size());
                double da = a.x() + a.y() - sum;
                double db = b.x() + b.y() - sum;
                if (da < 0 != db < 0) {
                    cuts.add(a.towards(b, da / (da - db)).x());
                }
            }
            cuts.sort(null);
            for (int i = 0; i + 1 < cuts.size(); i += 2) {
                d.append('M').append(Frame.p(cuts.get(i), sum - cuts.get(i))).append('L').append(Frame.p(cuts.get(i + 1), sum - cuts.get(i + 1)));
            }
        }
        if (!d.isEmpty()) {
            pen.path(d.toString(), Ink.line(Palette.HATCH, 1.1));
        }
    }
}
