package org.steadwork.outcome;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.steadwork.content.Entry;
import org.steadwork.outcome.scoring.About;
import org.steadwork.outcome.scoring.Threshold;

/** Reads what every way of measuring has in its file: its names and sources, and its amounts of change. */
final class AboutContent {

    private static final Set<String> TAGS = Set.of("S", "M", "C", "P");
    private static final int MOST_DECIMALS = 2;

    private AboutContent() {
    }

    static About about(Entry entry) {
        return new About(entry.text("key"), entry.text("name"), entry.text("label"), entry.text("version"), entry.optionalText("unit").orElse(""),
                decimals(entry), entry.texts("regions"), entry.integer("every_days"), entry.text("schedule"), entry.text("method"),
                entry.text("permission"), entry.text("source"), entry.texts("notes"));
    }

    static int decimals(Entry entry) {
        int decimals = entry.integer("decimals");
        if (decimals < 0 || decimals > MOST_DECIMALS) {
            throw entry.problem("'decimals' must be 0, 1 or 2, but is " + decimals);
        }
        return decimals;
    }

    static List<Threshold> thresholds(Entry entry) {
        List<Threshold> thresholds = new ArrayList<>();
        Set<String> leads = new HashSet<>();
        for (Entry t : entry.entries("thresholds")) {
            Threshold.Unit unit = t.has("unit") ? t.constant("unit", Threshold.Unit.class) : Threshold.Unit.POINTS;
            Threshold threshold = checked(t, () -> new Threshold(t.constant("kind", Threshold.Kind.class), t.number("value"), unit,
                    t.text("level"), t.texts("regions"), t.optionalText("population").orElse(""), t.optionalText("anchor").orElse(""),
                    t.optionalText("follow_up").orElse(""), t.flag("lead"), t.has("baseline_from") ? t.number("baseline_from") : Double.NEGATIVE_INFINITY,
                    t.has("baseline_to") ? t.number("baseline_to") : Double.POSITIVE_INFINITY, t.text("source"), tag(t)));
            if (threshold.leads() && !leads.add(threshold.kind() + " " + threshold.regions() + " " + t.optionalText("baseline_from"))) {
                throw t.problem("two amounts of the same kind lead for the same regions");
            }
            thresholds.add(threshold);
        }
        return thresholds;
    }

    static String tag(Entry entry) {
        String tag = entry.text("tag");
        if (!TAGS.contains(tag)) {
            throw entry.problem("'tag' must be one of S, M, C, P, but is '" + tag + "'");
        }
        return tag;
    }

    /** Makes something of an entry; what it refuses becomes a problem of the entry, with file and line. */
    static <T> T checked(Entry entry, Supplier<T> made) {
        try {
            return made.get();
        } catch (IllegalArgumentException e) {
            throw entry.problem(e.getMessage());
        }
    }
}
