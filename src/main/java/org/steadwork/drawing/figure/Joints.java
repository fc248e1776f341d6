package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What posing a frame yields, part by part: named points (anchors), segments, and warnings about the pose. */
final class Joints {

    private final Map<String, Vec3> points = new HashMap<>();
    private final List<Segment> segments = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();

    void put(String anchor, Vec3 point) {
        points.put(anchor, point);
    }

    void add(String name, String layer, Ball... balls) {
        segments.add(new Segment(name, layer, List.of(balls)));
    }

    void warn(String warning) {
        warnings.add(warning);
    }

    void forgetPositions() {
        points.clear();
        segments.clear();
        warnings.clear();
    }

    Vec3 point(String anchor) {
        Vec3 point = points.get(anchor);
        if (point == null) {
            throw new IllegalArgumentException("there is no anchor '" + anchor + "'");
        }
        return point;
    }

    Vec3 point(String anchor, Side side) {
        return point(side.of(anchor));
    }

    /** Finds a place: an anchor's name, an anchor with an offset, or a point. */
    Vec3 at(Object place) {
        if (place instanceof String anchor) {
            return point(anchor);
        }
        List<?> list = (List<?>) place;
        if (list.get(0) instanceof String anchor) {
            return point(anchor).plus(new Vec3(part(list, 1), part(list, 2), part(list, 3)));
        }
        return new Vec3(part(list, 0), part(list, 1), part(list, 2));
    }

    List<Segment> segments() {
        return segments;
    }

    List<String> warnings() {
        return warnings;
    }

    private static double part(List<?> list, int i) {
        return i < list.size() ? Values.number("place", list.get(i)) : 0;
    }
}
