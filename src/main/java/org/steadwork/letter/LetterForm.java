package org.steadwork.letter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.steadwork.web.Form;

/** The words of a draft as typed: a field a section, and for a table a field a cell, row after row. */
final class LetterForm {

    private static final int LONGEST = 20_000;
    private static final int EMPTY_ROWS = 2;

    private LetterForm() {
    }

    static String field(SectionKind section) {
        return (section.table() ? "rows-" : "text-") + section.key();
    }

    static Form show(Letter letter, List<SectionKind> sections) {
        Form form = Form.empty();
        fill(letter, sections, form);
        return form;
    }

    /** Puts the stored words into a form that came from elsewhere on the page. */
    static void fill(Letter letter, List<SectionKind> sections, Form form) {
        form.with("version", letter.version());
        sections.forEach(section -> form.with(field(section), letter.texts().getOrDefault(section.key(), "")));
    }

    /** Returns what was typed otherwise than it is kept, for who was still writing when the letter was signed. */
    static List<String> typedOtherwise(Form typed, Map<String, String> kept) {
        List<String> otherwise = new ArrayList<>();
        for (String field : typed.fields()) {
            if (field.startsWith("text-") || field.startsWith("rows-")) {
                String words = typed.values(field).stream().map(value -> value.replace("\r\n", "\n").strip()).filter(value -> !value.isEmpty())
                        .collect(Collectors.joining("\n"));
                String same = kept.getOrDefault(field.substring("text-".length()), "").replace('\t', '\n').replaceAll("\n+", "\n").strip();
                if (!words.isEmpty() && !words.replaceAll("\n+", "\n").equals(same)) {
                    otherwise.add(words);
                }
            }
        }
        return otherwise;
    }

    /** Reads the words; what is kept under sections that are closed today stays as it is. */
    static Map<String, String> read(Form form, List<SectionKind> sections, Map<String, String> kept) {
        Map<String, String> texts = new LinkedHashMap<>(kept);
        for (SectionKind section : sections) {
            String field = field(section);
            if (section.table()) {
                form.with(field, TableText.of(form.values(field), section.columns().size()));
            }
            String text = form.text(field, LONGEST);
            // an empty first cell is a leading tab, which reading a text would take off
            texts.put(section.key(), text == null ? "" : section.table() ? form.value(field) : text);
        }
        return texts;
    }

    /** What the editor shows of one section. */
    public record Field(String name, String key, String heading, String hint, boolean required, boolean standing, int lines, List<String> columns,
                        List<List<String>> rows, String stored, String problem) {

        public boolean table() {
            return !columns.isEmpty();
        }
    }

    static Field field(SectionKind section, Form form) {
        String name = field(section);
        String text = form.value(name);
        List<List<String>> rows = new ArrayList<>();
        if (section.table()) {
            rows.addAll(TableText.rows(text, section.columns().size()));
            for (int i = 0; i < EMPTY_ROWS; i++) {
                rows.add(Collections.nCopies(section.columns().size(), ""));
            }
        }
        int lines = Math.min(12, Math.max(2, text.length() / 48 + (int) text.lines().count()));
        String hint = section.standing().isPresent() ? "Can be reworded, not left out. It must still say: " + String.join(", ", section.keeps()) + "."
                : section.hint();
        return new Field(name, section.key(), section.heading(), hint, section.required(), section.standing().isPresent(), lines,
                section.columns(), rows, form.stored(name), form.error(name));
    }
}
