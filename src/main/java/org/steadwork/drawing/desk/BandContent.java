package org.steadwork.drawing.desk;

import java.util.EnumMap;
import java.util.Map;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;

/**
 * Reads the bands of the desk drawing from the very content the fit judges by, so that drawing and finding can never say different things:
 * the targets of the fit, and for the gaze its criterion.
 */
public final class BandContent {

    private static final Map<String, Target> DEVIATIONS = Map.of("feet", Target.FEET, "elbow", Target.ELBOW, "clearance", Target.THIGH, "knee_gap",
            Target.KNEE, "armrest", Target.ARMREST, "screen_drop", Target.SCREEN_SINGLE, "distance", Target.DISTANCE);

    private BandContent() {
    }

    /** Reads the bands; throws a ContentException with file and line when an entry is wrong or a target has none. */
    public static Bands read() {
        return of(Content.yaml("workplace/targets.yaml"), Content.yaml("workplace/criteria.yaml"));
    }

    static Bands of(Entry targets, Entry criteria) {
        Map<Target, Band> bands = new EnumMap<>(Target.class);
        for (Entry entry : targets.entries("targets")) {
            Target target = DEVIATIONS.get(entry.text("deviation"));
            if (target != null && bands.put(target, band(entry)) != null) {
                throw entry.problem("'" + entry.text("deviation") + "' has a second band");
            }
        }
        targets.entry("progressive_drop").ifPresent(entry -> bands.put(Target.SCREEN_PROGRESSIVE, band(entry)));
        criteria.entries("criteria").stream().filter(entry -> entry.text("kind").equals("gaze")).findFirst()
                .ifPresent(entry -> bands.put(Target.GAZE, band(entry)));
        for (Target target : Target.values()) {
            if (!bands.containsKey(target)) {
                throw targets.problem("There is no band for " + target);
            }
        }
        return new Bands(bands);
    }

    private static Band band(Entry entry) {
        try {
            String[] green = ends(entry, "green");
            String[] amber = ends(entry, "amber");
            return new Band(end(green[0], -1), end(green[1], 1), end(amber[0], -1), end(amber[1], 1));
        } catch (IllegalArgumentException e) {
            throw entry.problem(e.getMessage());
        }
    }

    /** Parts "low..high"; an open side is left empty. */
    private static String[] ends(Entry entry, String key) {
        String[] ends = entry.text(key).split("\\.\\.", -1);
        if (ends.length != 2) {
            throw entry.problem("'" + key + "' must be written low..high");
        }
        return ends;
    }

    private static double end(String written, int sign) {
        return written.isBlank() ? sign * Double.POSITIVE_INFINITY : Double.parseDouble(written);
    }
}
