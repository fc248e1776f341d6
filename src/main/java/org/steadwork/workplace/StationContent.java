package org.steadwork.workplace;

import java.util.EnumMap;
import java.util.Map;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;

/** Reads what is read off at a work place, from content. */
final class StationContent {

    private static final String PATH = "workplace/station.yaml";

    private StationContent() {
    }

    static Map<StationMeasure, StationText> measures() {
        Entry file = Content.yaml(PATH);
        file.text("source");
        Map<StationMeasure, StationText> measures = new EnumMap<>(StationMeasure.class);
        for (Entry entry : file.entries("measures")) {
            StationMeasure key = entry.constant("key", StationMeasure.class);
            StationText text = new StationText(key, entry.text("group"), entry.text("label"), entry.text("unit"), FitContent.band(entry, "range"));
            if (measures.put(key, text) != null) {
                throw entry.problem("there are two readings " + key);
            }
        }
        for (StationMeasure measure : StationMeasure.values()) {
            if (!measures.containsKey(measure)) {
                throw file.problem("the reading " + measure + " is missing");
            }
        }
        return measures;
    }

    static double giveOrTake() {
        return Content.yaml(PATH).number("give_or_take");
    }
}
