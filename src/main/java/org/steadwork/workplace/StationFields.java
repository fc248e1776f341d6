package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The fields of the form for what is read off at the work place: one row for each part, now and its range side by side. */
record StationFields(String title, List<Field> fields) {

    /** One field; {@code label} is short where the row's title says the rest; {@code known} says what the register knows, or is null. */
    record Field(String key, String label, String unit, String known) {
    }

    /** Tells whether the row needs its title, because it has several fields. */
    public boolean several() {
        return fields.size() > 1;
    }

    static List<StationFields> of(String group, WorkplaceContent content, Map<String, String> known) {
        Map<String, List<Field>> rows = new LinkedHashMap<>();
        for (StationMeasure measure : StationMeasure.values()) {
            StationText text = content.text(measure);
            if (text.group().equals(group)) {
                String title = title(content, measure);
                String label = measure.hasRange() && measure.role() == StationMeasure.Role.NOW ? "now" : text.label();
                rows.computeIfAbsent(title, t -> new ArrayList<>()).add(new Field(text.key(), label, text.unit(), known.get(text.key())));
            }
        }
        return rows.entrySet().stream().map(row -> new StationFields(row.getKey(), row.getValue())).toList();
    }

    private static String title(WorkplaceContent content, StationMeasure measure) {
        return measure.hasRange() ? content.text(measure.now()).label() : content.text(measure).label();
    }

    /** Returns a field's label as an error names it: part, then which end. */
    static String fullLabel(WorkplaceContent content, StationMeasure measure) {
        String label = content.text(measure).label();
        return measure.hasRange() && measure.role() != StationMeasure.Role.NOW ? title(content, measure) + ", " + label : label;
    }
}
