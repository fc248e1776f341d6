package org.steadwork.body;

import java.util.Map;
import java.util.Objects;

/**
 * One zone of the body chart.
 *
 * @param key        name used in stored reports, unique and stable
 * @param label      words for people, with the side: "Left knee"
 * @param side       the patient's own side
 * @param order      place in the reading order, from 1: head to foot, front then back, right before left
 * @param anchor     where the number stands, in units of the drawing
 * @param hitStroke  width of the invisible edge that takes a tap beside the zone, in units of the drawing, 0 or more
 * @param neighbours key of the zone each arrow key leads to; a direction may be missing
 * @param path       outline as SVG path data of absolute M, C and Z
 */
public record Zone(String key, String label, Side side, View view, BodyRegion region, int order, Anchor anchor,
        double hitStroke, Map<Direction, String> neighbours, String path) {

    /** A point in units of the drawing; y grows downwards. */
    public record Anchor(double x, double y) {
        public Anchor {
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                throw new IllegalArgumentException("An anchor must be a finite point, but was " + x + ", " + y);
            }
        }
    }

    public Zone {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(side, "side");
        Objects.requireNonNull(view, "view");
        Objects.requireNonNull(region, "region");
        Objects.requireNonNull(anchor, "anchor");
        Objects.requireNonNull(path, "path");
        if (!(hitStroke >= 0 && hitStroke <= 100)) {
            throw new IllegalArgumentException("The hit stroke of " + key + " must be from 0 to 100, but was " + hitStroke);
        }
        neighbours = Map.copyOf(neighbours);
    }
}
