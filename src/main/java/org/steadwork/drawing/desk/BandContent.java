package org.steadwork.drawing.desk;

import java.util.EnumMap;
import java.util.Map;

import org.steadwork.content.Content;
import org.steadwork.content.Entry;

/** Reads the bands of the desk drawing from content and checks that each target has exactly one, with a source. */
public final class BandContent {

    private static final String PATH = "drawing/desk-bands.yaml";

    private BandContent() {
    }

    /** Reads the bands; throws a ContentException with file and line when an entry is wrong or a target has none. */
    public static Bands read() {
        return of(Content.yaml(PATH));
    }

    static Bands of(Entry content) {
        Map<Target, Band> bands = new EnumMap<>(Target.class);
        for (Entry entry : content.entries("bands")) {
            Target target = entry.constant("key", Target.class);
            entry.text("source");
            entry.text("evidence");
            entry.text("unit");
            if (bands.put(target, band(entry)) != null) {
                throw entry.problem("'" + entry.text("key") + "' has a second band");
            }
        }
        for (Target target : Target.values()) {
            if (!bands.containsKey(target)) {
                throw content.problem("There is no band for " + target);
            }
        }
        return new Bands(bands);
    }

    static Band band(Entry entry) {
        try {
            return new Band(end(entry, "from", -1), end(entry, "to", 1), end(entry, "caution_from", -1), end(entry, "caution_to", 1));
        } catch (IllegalArgumentException e) {
            throw entry.problem(e.getMessage());
        }
    }

    private static double end(Entry entry, String key, int sign) {
        return entry.has(key) ? entry.number(key) : sign * Double.POSITIVE_INFINITY;
    }
}
