package org.steadwork.workplace;

import io.quarkus.runtime.Startup;
import jakarta.inject.Singleton;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.content.ReadEarly;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.Equipment;

/** The words for what can be asked for, read once; a wrong or missing entry stops the start. */
@Startup
@Singleton
class EquipmentContent implements ReadEarly {

    private static final String PATH = "workplace/equipment.yaml";

    private final double margin;
    private final double step;
    private final Map<Equipment, EquipmentText> worked = new EnumMap<>(Equipment.class);
    private final Map<String, EquipmentText> seen = new LinkedHashMap<>();

    EquipmentContent(WorkplaceContent content) {
        Entry file = Content.yaml(PATH);
        margin = file.number("margin");
        step = file.number("step");
        file.text("margin_source");
        for (Entry entry : file.entries("equipment")) {
            List<BodyMeasure> drivers = entry.texts("driven_by").stream().map(key -> BodyMeasure.valueOf(key.toUpperCase(Locale.ROOT))).toList();
            EquipmentText text = new EquipmentText(entry.text("what"), entry.text("spec"), entry.text("why"), criterion(entry, "judges", content), drivers,
                    entry.text("source"));
            if (worked.put(entry.constant("equipment", Equipment.class), text) != null) {
                throw entry.problem("'" + entry.text("equipment") + "' stands here twice");
            }
        }
        for (Equipment equipment : Equipment.values()) {
            if (!worked.containsKey(equipment)) {
                throw file.problem("the equipment " + equipment + " is missing");
            }
        }
        for (Entry entry : file.entries("seen")) {
            String criterion = criterion(entry, "criterion", content);
            seen.put(criterion, new EquipmentText(entry.text("what"), entry.text("spec"), entry.text("why"), criterion, List.of(), entry.text("source")));
        }
    }

    private static String criterion(Entry entry, String key, WorkplaceContent content) {
        String id = entry.text(key);
        if (content.criterion(id).isEmpty()) {
            throw entry.problem("there is no criterion '" + id + "'");
        }
        return id;
    }

    /** What is asked for beyond the wanted value and its error, to either side, in mm. */
    double margin() {
        return margin;
    }

    /** The coarsest step an adjustable piece may have, in mm. */
    double step() {
        return step;
    }

    EquipmentText of(Equipment equipment) {
        return worked.get(equipment);
    }

    /** What is asked for when a criterion is not met, by its id, in the order of the content. */
    Map<String, EquipmentText> seen() {
        return seen;
    }
}
