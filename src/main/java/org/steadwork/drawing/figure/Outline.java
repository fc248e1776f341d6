package org.steadwork.drawing.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** The smallest outline round circles, as an SVG path of arcs and straight lines. */
final class Outline {

    private static final int POINTS_PER_CIRCLE = 60;
    /** A third of a circle. */
    private static final int LONGEST_PIECE = 20;

    private Outline() {
    }

    private record Rim(double x, double y, int circle) {
    }

    static String path(List<Circle> circles) {
        List<Circle> outer = outer(circles);
        List<Rim> hull = hull(outer);
        if (hull.stream().mapToInt(Rim::circle).distinct().count() == 1) {
            hull.add(hull.get(0));
            return arcs(outer, hull);
        }
        return arcs(outer, startingAtAJoin(hull));
    }

    /** A circle inside another adds nothing; of equal ones the first stays. */
    private static List<Circle> outer(List<Circle> circles) {
        List<Circle> kept = new ArrayList<>();
        for (int i = 0; i < circles.size(); i++) {
            Circle c = circles.get(i);
            boolean covered = kept.contains(c);
            for (int j = 0; j < circles.size() && !covered; j++) {
                covered = !circles.get(j).equals(c) && circles.get(j).covers(c);
            }
            if (!covered) {
                kept.add(c);
            }
        }
        return kept.isEmpty() ? circles.subList(0, 1) : kept;
    }

    /** Andrew's monotone chain over points on the rims; each point remembers its circle. */
    private static List<Rim> hull(List<Circle> circles) {
        List<Rim> points = new ArrayList<>();
        for (int i = 0; i < circles.size(); i++) {
            Circle c = circles.get(i);
            for (int j = 0; j < POINTS_PER_CIRCLE; j++) {
                double t = 2 * Math.PI * j / POINTS_PER_CIRCLE;
                points.add(new Rim(c.x() + c.r() * Math.cos(t), c.y() + c.r() * Math.sin(t), i));
            }
        }
        points.sort(Comparator.comparingDouble(Rim::x).thenComparingDouble(Rim::y).thenComparingInt(Rim::circle));
        List<Rim> hull = chain(points);
        List<Rim> backwards = new ArrayList<>(points);
        Collections.reverse(backwards);
        hull.addAll(chain(backwards));
        return hull;
    }

    /** One half of the hull without its last point, which begins the other half. */
    private static List<Rim> chain(List<Rim> points) {
        List<Rim> out = new ArrayList<>();
        for (Rim p : points) {
            while (out.size() > 1 && turn(out.get(out.size() - 2), out.get(out.size() - 1), p) <= 0) {
                out.remove(out.size() - 1);
            }
            out.add(p);
        }
        out.remove(out.size() - 1);
        return out;
    }

    private static double turn(Rim a, Rim b, Rim c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }

    private static List<Rim> startingAtAJoin(List<Rim> hull) {
        int start = 0;
        while (hull.get(start).circle() == hull.get((start + hull.size() - 1) % hull.size()).circle()) {
            start++;
        }
        List<Rim> turned = new ArrayList<>(hull.subList(start, hull.size()));
        turned.addAll(hull.subList(0, start));
        return turned;
    }

    private static String arcs(List<Circle> circles, List<Rim> hull) {
        StringBuilder d = new StringBuilder("M").append(Svg.xy(hull.get(0).x(), hull.get(0).y()));
        int i = 0;
        while (i < hull.size()) {
            int j = i;
            while (j + 1 < hull.size() && hull.get(j + 1).circle() == hull.get(i).circle()) {
                j++;
            }
            arc(d, circles.get(hull.get(i).circle()).r(), hull.subList(i, j + 1));
            if (j + 1 < hull.size()) {
                d.append('L').append(Svg.xy(hull.get(j + 1).x(), hull.get(j + 1).y()));
            }
            i = j + 1;
        }
        return d.append('z').toString();
    }

    /** In pieces, since rounding moves the centre of one long arc visibly. */
    private static void arc(StringBuilder d, double radius, List<Rim> rim) {
        String r = Svg.num(radius);
        int last = rim.size() - 1;
        int pieces = (last + LONGEST_PIECE - 1) / LONGEST_PIECE;
        for (int piece = 1; piece <= pieces; piece++) {
            Rim end = rim.get(last * piece / pieces);
            d.append('A').append(r).append(' ').append(r).append(" 0 0 1 ").append(Svg.xy(end.x(), end.y()));
        }
    }
}
