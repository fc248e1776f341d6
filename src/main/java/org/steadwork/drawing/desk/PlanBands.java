package org.steadwork.drawing.desk;

import java.util.EnumMap;
import java.util.Map;

import org.steadwork.content.Content;
import org.steadwork.content.Entry;

/** The bands of the plan, one for each {@link PlanTarget}, read from content. */
public record PlanBands(Map<PlanTarget, Band> byTarget) {

    private static final String PATH = "drawing/plan-bands.yaml";

    public PlanBands {
        byTarget = Map.copyOf(byTarget);
        for (PlanTarget target : PlanTarget.values()) {
            if (!byTarget.containsKey(target)) {
                throw new IllegalArgumentException("There is no band for " + target);
            }
        }
    }

    /** Reads the bands; throws a ContentException with file and line when an entry is wrong or a target has none. */
    public static PlanBands read() {
        Entry content = Content.yaml(PATH);
        Map<PlanTarget, Band> bands = new EnumMap<>(PlanTarget.class);
        for (Entry entry : content.entries("bands")) {
            entry.text("source");
            entry.text("evidence");
            entry.text("unit");
            if (bands.put(entry.constant("key", PlanTarget.class), band(entry)) != null) {
                throw entry.problem("'" + entry.text("key") + "' has a second band");
            }
        }
        try {
            return new PlanBands(bands);
        } catch (IllegalArgumentException e) {
            throw content.problem(e.getMessage());
        }
    }

    private static Band band(Entry entry) {
        try {
            return new Band(end(entry, "from", -1), end(entry, "to", 1), end(entry, "caution_from", -1), end(entry, "caution_to", 1));
        } catch (IllegalArgumentException e) {
            throw entry.problem(e.getMessage());
        }
    }

    private static double end(Entry entry, String key, int sign) {
        return entry.has(key) ? entry.number(key) : sign * Double.POSITIVE_INFINITY;
    }

    State judge(PlanTarget target, double value) {
        return byTarget.get(target).judge(value);
    }
}
