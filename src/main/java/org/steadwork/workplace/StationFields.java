package org.steadwork.workplace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The fields of the form for what is read off at the work place: one row for each part, now and its range side by side. */
record StationFields(String title, List<Field> fields, String known) {

    /** One field; {@code label} is short where the row's title says the rest; {@code known} says what the register knows, or is null. */
    record Field(String key, String label, String unit, String known) {

        public String registered() {
            return "Register: " + known;
        }
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
        return rows.entrySet().stream().map(row -> new StationFields(row.getKey(), row.getValue(), known(row.getValue()))).toList();
    }

    /** Says in one line what the register knows of a row with several fields, or null. */
    private static String known(List<Field> fields) {
        List<String> parts = fields.stream().filter(field -> field.known() != null)
                .map(field -> field.label() + " " + field.known()).toList();
        return parts.isEmpty() ? null : "Register: " + String.join("; ", parts);
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
