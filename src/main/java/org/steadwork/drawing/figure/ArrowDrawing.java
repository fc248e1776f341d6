package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.List;

/** Places the arrows of one frame: traced from the movement itself, straight, round, or a push without movement. */
final class ArrowDrawing {

    private static final int TRACE_STEPS = 12;
    private static final int ARC_STEPS = 16;
    private static final int BOW_STEPS = 10;
    private static final double PUSH_LENGTH = 13;

    private final Panel panel;
    private final Joints joints;
    private final List<Pose> poses;
    private final int frame;

    /** @param frame number of the frame, from 0 */
    ArrowDrawing(Panel panel, Joints joints, List<Pose> poses, int frame) {
        this.panel = panel;
        this.joints = joints;
        this.poses = poses;
        this.frame = frame;
    }

    String draw(Values arrow) {
        boolean both = arrow.flag("both", false);
        if (arrow.has("trace")) {
            return Arrow.draw(trace(arrow), both);
        }
        if (arrow.has("line")) {
            return Arrow.draw(line(arrow), both);
        }
        if (arrow.has("arc")) {
            return Arrow.draw(arc(arrow), both);
        }
        if (arrow.has("press")) {
            return press(arrow);
        }
        throw new IllegalArgumentException("an arrow needs trace, line, arc or press");
    }

    /** The way a point takes from the frame before to this one, found by posing the frames in between. */
    private List<Point> trace(Values arrow) {
        List<Point> way = new ArrayList<>();
        for (int i = 0; i <= TRACE_STEPS; i++) {
            Pose pose = poses.get(Math.max(frame - 1, 0)).towards(poses.get(frame), i / (double) TRACE_STEPS);
            way.add(panel.at(Skeleton.of(pose).joints().at(arrow.raw("trace"))));
        }
        double aside = arrow.number("aside", 0) * panel.scale();
        List<Point> beside = new ArrayList<>();
        for (int i = 0; i <= TRACE_STEPS; i++) {
            Point before = way.get(Math.max(i - 1, 0));
            Point after = way.get(Math.min(i + 1, TRACE_STEPS));
            double n = Math.max(before.distance(after), 1e-9);
            beside.add(way.get(i).plus((after.y() - before.y()) / n * aside, -(after.x() - before.x()) / n * aside));
        }
        double[] part = arrow.has("part") ? arrow.numbers("part") : new double[] {.08, 1};
        return beside.subList((int) (part[0] * TRACE_STEPS), (int) Math.round(part[1] * TRACE_STEPS) + 1);
    }

    private List<Point> line(Values arrow) {
        List<?> ends = arrow.list("line");
        Point a = end(ends.get(0));
        Point b = end(ends.get(1));
        double bow = arrow.number("bow", 0) * panel.scale();
        if (bow == 0) {
            return List.of(a, b);
        }
        double n = Math.max(a.distance(b), 1e-9);
        Point middle = a.towards(b, .5).plus((b.y() - a.y()) / n * bow, -(b.x() - a.x()) / n * bow);
        List<Point> curve = new ArrayList<>();
        for (int i = 0; i <= BOW_STEPS; i++) {
            double t = i / (double) BOW_STEPS;
            curve.add(a.towards(middle, t).towards(middle.towards(b, t), t));
        }
        return curve;
    }

    /** An anchor moved within the picture plane, or a point of that plane, in figure units. */
    private Point end(Object end) {
        List<?> list = (List<?>) end;
        if (list.get(0) instanceof String anchor) {
            double[] moved = Values.numbers("line", list.subList(1, list.size()));
            return panel.at(joints.point(anchor)).plus(moved[0] * panel.scale(), -moved[1] * panel.scale());
        }
        double[] v = Values.numbers("line", list);
        return panel.plane(new Point(v[0], v[1]));
    }

    /** Centre, half width, half height, from and to in degrees; 0 is right, 90 up. */
    private List<Point> arc(Values arrow) {
        List<?> arc = arrow.list("arc");
        double k = panel.scale();
        Point centre = panel.at(joints.at(arc.get(0))).plus(arrow.number("dx", 0) * k, -arrow.number("dy", 0) * k);
        double[] v = Values.numbers("arc", arc.subList(1, arc.size()));
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= ARC_STEPS; i++) {
            double t = Math.toRadians(v[2] + (v[3] - v[2]) * i / ARC_STEPS);
            points.add(centre.plus(v[0] * k * Math.cos(t), -v[1] * k * Math.sin(t)));
        }
        return points;
    }

    /** A push against something: a thick arrow and, unless two arrows meet, a bar that stands for what does not give way. */
    private String press(Values arrow) {
        List<?> press = arrow.list("press");
        double[] v = Values.numbers("press", press.subList(1, press.size()));
        Point tip = panel.at(joints.at(press.get(0))).plus(v[0] * panel.scale(), -v[1] * panel.scale());
        double c = Math.cos(Math.toRadians(v[2]));
        double s = -Math.sin(Math.toRadians(v[2]));
        String push = Arrow.draw(List.of(tip.plus(-c * PUSH_LENGTH, -s * PUSH_LENGTH), tip), false, 4.4, 8);
        if (!arrow.flag("bar", true)) {
            return push;
        }
        String bar = Svg.line(tip.plus(c * 2.5 - s * 7, s * 2.5 + c * 7), tip.plus(c * 2.5 + s * 7, s * 2.5 - c * 7));
        return push + Svg.stroke(bar, Svg.PAPER, 6) + Svg.stroke(bar, Svg.PLUM, 3);
    }
}
