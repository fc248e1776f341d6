package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A movement arrow through points of the picture: a smooth line with a head at its end, or at both. */
final class Arrow {

    static final double LINE = 3.6;
    static final double HEAD = 9;
    private static final double HALO = 3.4;

    private Arrow() {
    }

    static String draw(List<Point> points, boolean both) {
        return draw(points, both, LINE, HEAD);
    }

    static String draw(List<Point> points, boolean both, double width, double wantedHead) {
        double total = 0;
        for (int i = 1; i < points.size(); i++) {
            total += points.get(i).distance(points.get(i - 1));
        }
        double head = Math.min(wantedHead, total * (both ? .5 : .72));
        String heads = head(points, head);
        List<Point> body = trimmed(points, head * .8);
        if (both) {
            heads += head(reversed(points), head);
            body = reversed(trimmed(reversed(body), head * .8));
        }
        String d = smooth(body);
        return Svg.stroke(d, Svg.PAPER, width + HALO) + Svg.solid(heads, Svg.PAPER, HALO)
                + Svg.stroke(d, Svg.PLUM, width) + Svg.solid(heads, Svg.PLUM, 1);
    }

    private static String head(List<Point> points, double size) {
        List<Point> shaft = trimmed(points, size);
        Point tip = points.get(points.size() - 1);
        Point neck = shaft.get(shaft.size() - 1);
        double n = Math.max(tip.distance(neck), 1e-9);
        double ux = (tip.x() - neck.x()) / n;
        double uy = (tip.y() - neck.y()) / n;
        double half = size * .55;
        return "M" + Svg.xy(tip.x(), tip.y()) + "L" + Svg.xy(tip.x() - ux * size - uy * half, tip.y() - uy * size + ux * half)
                + "L" + Svg.xy(tip.x() - ux * size + uy * half, tip.y() - uy * size - ux * half) + "z";
    }

    /** The line cut short at its end by a length. */
    private static List<Point> trimmed(List<Point> points, double cut) {
        List<Point> kept = new ArrayList<>(points);
        double left = cut;
        while (kept.size() > 2 && last(kept).distance(kept.get(kept.size() - 2)) < left) {
            left -= last(kept).distance(kept.get(kept.size() - 2));
            kept.remove(kept.size() - 1);
        }
        Point end = last(kept);
        Point before = kept.get(kept.size() - 2);
        double n = end.distance(before);
        kept.set(kept.size() - 1, n < 1e-9 ? end : end.towards(before, Math.min(left, n * .95) / n));
        return kept;
    }

    private static String smooth(List<Point> points) {
        StringBuilder d = new StringBuilder("M").append(Svg.xy(points.get(0).x(), points.get(0).y()));
        if (points.size() == 2) {
            return d.append('L').append(Svg.xy(points.get(1).x(), points.get(1).y())).toString();
        }
        for (int i = 1; i < points.size() - 1; i++) {
            Point bend = points.get(i);
            Point end = i < points.size() - 2 ? bend.towards(points.get(i + 1), .5) : last(points);
            d.append('Q').append(Svg.xy(bend.x(), bend.y())).append(' ').append(Svg.xy(end.x(), end.y()));
        }
        return d.toString();
    }

    private static Point last(List<Point> points) {
        return points.get(points.size() - 1);
    }

    private static List<Point> reversed(List<Point> points) {
        List<Point> back = new ArrayList<>(points);
        Collections.reverse(back);
        return back;
    }
}
