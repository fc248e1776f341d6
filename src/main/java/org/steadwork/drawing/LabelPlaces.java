package org.steadwork.drawing;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds free places for the words on a drawing: what is placed first keeps its place, later words give way. */
public final class LabelPlaces {

    /** Where a text stands: baseline, text anchor and the box it fills. */
    public record Place(double x, double y, String anchor, Rectangle2D box) {

        public static Place of(double x, double y, String anchor, String text, double size, boolean bold) {
            double width = TextWidth.of(text, size, bold);
            double left = anchor.equals("end") ? x - width : anchor.equals("middle") ? x - width / 2 : x;
            return new Place(x, y, anchor, new Rectangle2D.Double(left, y - size * .8, width, size));
        }
    }

    private record Stroke(Line2D line, double share) {
    }

    private final Rectangle2D page;
    private final List<Rectangle2D> taken = new ArrayList<>();
    private final List<Stroke> lines = new ArrayList<>();

    public LabelPlaces(Rectangle2D page) {
        this.page = page;
    }

    public void take(Rectangle2D box) {
        taken.add(box);
    }

    /** A line that words may cross where there is no better place; it counts for a share of the words' area. */
    public void line(double share, double x1, double y1, double x2, double y2) {
        lines.add(new Stroke(new Line2D.Double(x1, y1, x2, y2), share));
    }

    /** Chooses the first candidate that touches nothing, else the one that touches least; takes no place yet. */
    public Place best(List<Place> candidates) {
        Place best = null;
        for (Place candidate : candidates) {
            if (best == null || cost(candidate) < cost(best) - 1e-9) {
                best = candidate;
            }
        }
        return best;
    }

    /** Whether a place lies on other words or a point, or leaves the page. */
    public boolean touches(Place place) {
        return !page.contains(place.box()) || taken.stream().anyMatch(place.box()::intersects);
    }

    /** 0 where nothing is touched; square units covered, a line being counted for less. */
    public double cost(Place place) {
        Rectangle2D box = place.box();
        Rectangle2D inside = box.createIntersection(page);
        double cost = 4 * (area(box) - Math.max(0, area(inside)));
        for (Rectangle2D other : taken) {
            if (box.intersects(other)) {
                cost += area(box.createIntersection(other));
            }
        }
        for (Stroke stroke : lines) {
            if (stroke.line().intersects(box)) {
                cost += stroke.share() * area(box);
            }
        }
        return cost;
    }

    private static double area(Rectangle2D box) {
        return box.isEmpty() ? 0 : box.getWidth() * box.getHeight();
    }
}
