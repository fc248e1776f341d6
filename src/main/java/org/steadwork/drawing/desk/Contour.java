package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The outline of several cones joined by a smooth minimum, traced on a grid (marching squares) and smoothed.
 *
 * @param blend mm over which two cones flow into each other
 * @param step  mm between grid lines
 * @param cut   a further signed distance the shape stays inside of
 */
record Contour(List<Cone> cones, double blend, double step, Cut cut) {

    /** A signed distance in mm, positive outside. */
    @FunctionalInterface
    interface Cut {
        double at(double x, double y);
    }

    private static final double FAR = 60;
    private static final int SHORTEST_LOOP = 12;
    private static final int SMOOTHINGS = 4;
    private static final int KEEP_EVERY = 3;

    double distance(double x, double y) {
        double d = FAR;
        for (Cone cone : cones) {
            if (cone.near(x, y, 2 * blend)) {
                double e = cone.distance(x, y);
                double overlap = Math.max(blend - Math.abs(d - e), 0) / blend;
                d = Math.min(d, e) - overlap * overlap * blend * .25;
            }
        }
        return Math.max(d, cut.at(x, y));
    }

    /** The closed outlines in mm, each without its last point repeated. */
    List<List<Point>> loops() {
        Grid grid = grid();
        List<List<Point>> loops = new ArrayList<>();
        Set<Edge> seen = new HashSet<>();
        for (Edge start : grid.neighbours.keySet()) {
            List<Point> loop = new ArrayList<>();
            Edge here = start;
            while (here != null && seen.add(here)) {
                loop.add(grid.crossings.get(here));
                here = grid.neighbours.get(here).stream().filter(e -> !seen.contains(e)).findFirst().orElse(null);
            }
            if (loop.size() > SHORTEST_LOOP) {
                loops.add(thinned(smoothed(loop)));
            }
        }
        return loops;
    }

    private record Edge(int i, int j, boolean horizontal) {
        static Edge between(int[] a, int[] b) {
            return new Edge(Math.min(a[0], b[0]), Math.min(a[1], b[1]), a[0] != b[0]);
        }
    }

    private record Grid(Map<Edge, Point> crossings, Map<Edge, List<Edge>> neighbours) {
        void join(Edge a, Edge b) {
            neighbours.computeIfAbsent(a, k -> new ArrayList<>(2)).add(b);
            neighbours.computeIfAbsent(b, k -> new ArrayList<>(2)).add(a);
        }
    }

    private Grid grid() {
        double x0 = cones.stream().mapToDouble(Cone::left).min().orElseThrow() - 20;
        double x1 = cones.stream().mapToDouble(Cone::right).max().orElseThrow() + 20;
        double y0 = cones.stream().mapToDouble(Cone::bottom).min().orElseThrow() - 20;
        double y1 = cones.stream().mapToDouble(Cone::top).max().orElseThrow() + 20;
        int columns = (int) ((x1 - x0) / step) + 2;
        int rows = (int) ((y1 - y0) / step) + 2;
        double[][] field = new double[rows][columns];
        for (int j = 0; j < rows; j++) {
            for (int i = 0; i < columns; i++) {
                field[j][i] = distance(x0 + i * step, y0 + j * step);
            }
        }
        Grid grid = new Grid(new LinkedHashMap<>(), new LinkedHashMap<>());
        for (int j = 0; j < rows - 1; j++) {
            for (int i = 0; i < columns - 1; i++) {
                int[][] corners = {{i, j}, {i + 1, j}, {i + 1, j + 1}, {i, j + 1}};
                List<Edge> crossed = new ArrayList<>(4);
                for (int e = 0; e < 4; e++) {
                    int[] a = corners[e];
                    int[] b = corners[(e + 1) % 4];
                    double fa = field[a[1]][a[0]];
                    double fb = field[b[1]][b[0]];
                    if (fa < 0 != fb < 0) {
                        Edge edge = Edge.between(a, b);
                        double share = fa / (fa - fb);
                        grid.crossings.put(edge, new Point(x0 + (a[0] + share * (b[0] - a[0])) * step, y0 + (a[1] + share * (b[1] - a[1])) * step));
                        crossed.add(edge);
                    }
                }
                for (int m = 0; m + 1 < crossed.size(); m += 2) {
                    grid.join(crossed.get(m), crossed.get(m + 1));
                }
            }
        }
        return grid;
    }

    private static List<Point> smoothed(List<Point> loop) {
        List<Point> points = loop;
        int n = loop.size();
        for (int round = 0; round < SMOOTHINGS; round++) {
            List<Point> next = new ArrayList<>(n);
            for (int i = 0; i < n; i++) {
                Point before = points.get((i + n - 1) % n);
                Point here = points.get(i);
                Point after = points.get((i + 1) % n);
                next.add(new Point((before.x() + 2 * here.x() + after.x()) / 4, (before.y() + 2 * here.y() + after.y()) / 4));
            }
            points = next;
        }
        return points;
    }

    private static List<Point> thinned(List<Point> points) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < points.size(); i += KEEP_EVERY) {
            kept.add(points.get(i));
        }
        return kept;
    }

    /** The outlines as one smooth path in units of the drawing. */
    String path(Frame frame) {
        StringBuilder d = new StringBuilder();
        for (List<Point> loop : loops()) {
            List<Point> q = loop.stream().map(frame::at).toList();
            int n = q.size();
            d.append('M').append(Frame.p(q.get(0).x(), q.get(0).y()));
            for (int i = 0; i < n; i++) {
                Point p0 = q.get((i + n - 1) % n);
                Point p1 = q.get(i);
                Point p2 = q.get((i + 1) % n);
                Point p3 = q.get((i + 2) % n);
                d.append('C').append(Frame.p(p1.x() + (p2.x() - p0.x()) / 6, p1.y() + (p2.y() - p0.y()) / 6)).append(' ')
                        .append(Frame.p(p2.x() - (p3.x() - p1.x()) / 6, p2.y() - (p3.y() - p1.y()) / 6)).append(' ')
                        .append(Frame.p(p2.x(), p2.y()));
            }
            d.append('Z');
        }
        return d.toString();
    }
}
