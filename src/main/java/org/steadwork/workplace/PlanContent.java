package org.steadwork.workplace;

import io.quarkus.runtime.Startup;
import jakarta.inject.Singleton;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.content.ReadEarly;

/** What is read off a desk from above, from content; a wrong or missing entry stops the start. */
@Startup
@Singleton
class PlanContent implements ReadEarly {

    private static final String PATH = "workplace/plan.yaml";

    private final Map<PlanItem, PlanText> items = new EnumMap<>(PlanItem.class);

    PlanContent() {
        Entry file = Content.yaml(PATH);
        file.text("source");
        for (Entry entry : file.entries("items")) {
            PlanItem item = entry.constant("key", PlanItem.class);
            PlanText text = new PlanText(item, entry.text("group"), entry.text("label"), entry.text("unit"), FitContent.band(entry, "range"),
                    entry.has("needed") && entry.flag("needed"), entry.has("otherwise") ? entry.number("otherwise") : Double.NaN);
            if (items.put(item, text) != null) {
                throw entry.problem("'" + entry.text("key") + "' stands here twice");
            }
        }
        for (PlanItem item : PlanItem.values()) {
            if (!items.containsKey(item)) {
                throw file.problem(item.key() + " is missing");
            }
        }
    }

    PlanText of(PlanItem item) {
        return items.get(item);
    }

    List<PlanText> group(String group) {
        return items.values().stream().filter(text -> text.group().equals(group)).toList();
    }

    List<PlanText> all() {
        return List.copyOf(items.values());
    }
}
