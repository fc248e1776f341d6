package org.steadwork.letter;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.letter.disclosure.Cell;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.letter.disclosure.Rule;

/** Reads the disclosure matrix from the content and refuses a table with a hole or a reader it does not know. */
final class DisclosureContent {

    private static final Set<String> OTHER_KEYS = Set.of("key", "label", "limits", "tag", "note");

    private DisclosureContent() {
    }

    static Matrix read() {
        return read(Content.yaml("letters/disclosure.yaml"));
    }

    static Matrix read(Entry file) {
        file.text("source");
        Map<InformationCategory, Map<Recipient, Cell>> cells = new EnumMap<>(InformationCategory.class);
        Map<InformationCategory, String> labels = new EnumMap<>(InformationCategory.class);
        for (Entry row : file.entries("categories")) {
            InformationCategory category = row.constant("key", InformationCategory.class);
            if (cells.put(category, row(row)) != null) {
                throw row.problem("'" + row.text("key") + "' is written twice");
            }
            labels.put(category, row.text("label"));
            row.text("tag");
        }
        try {
            return new Matrix(cells, labels);
        } catch (IllegalArgumentException e) {
            throw file.problem(e.getMessage());
        }
    }

    private static Map<Recipient, Cell> row(Entry row) {
        Map<Recipient, Cell> cells = new EnumMap<>(Recipient.class);
        Set<String> unknown = new HashSet<>(row.keys());
        unknown.removeAll(OTHER_KEYS);
        for (Recipient recipient : Recipient.values()) {
            String key = recipient.name().toLowerCase(Locale.ROOT);
            unknown.remove(key);
            String limit = row.entry("limits").flatMap(limits -> limits.optionalText(key)).orElse("");
            cells.put(recipient, new Cell(rule(row, key), limit));
        }
        if (!unknown.isEmpty()) {
            throw row.problem("knows no reader " + unknown);
        }
        return cells;
    }

    static Rule rule(Entry row, String key) {
        return switch (row.text(key)) {
            case "A" -> Rule.ALLOWED;
            case "E" -> Rule.EXPLICIT;
            case "N" -> Rule.NEVER;
            default -> throw row.problem("'" + key + "' must be A, E or N, but is '" + row.text(key) + "'");
        };
    }
}
