package org.steadwork.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.content.Entry;
import org.steadwork.web.Dates;

/** What a demo letter says, section by section, from what its file holds: texts, and the cells of tables row after row. */
public record DemoLetterWords(Map<String, String> texts, Map<String, List<String>> tables) {

    /** Columns of each table of a letter. */
    public static final int COLUMNS = 4;

    /** Puts a letter's words together. */
    public static DemoLetterWords of(Entry demo, Entry visit, Entry letter) {
        Map<String, String> texts = new LinkedHashMap<>();
        Map<String, List<String>> tables = new LinkedHashMap<>();
        if (letter.text("kind").equals("employer_report")) {
            texts.put("request", "I ask for the changes below from " + shown(letter, "signed") + ".");
            texts.put("can_do", letter.optionalText("capacity").orElse("Not established."));
            if (!visit.has("next_review")) {
                texts.put("next", "No further review is planned here. Please tell me if a change is not practicable.");
            }
            letter.optionalText("symptom_words").ifPresent(words -> texts.put("symptoms", "Reported in the " + words + "."));
            tables.put("modifications", changes(letter));
            tables.put("equipment", equipment(letter));
        } else if (letter.text("kind").equals("progress_report") || letter.text("kind").equals("discharge_summary")) {
            report(visit, letter, texts);
        } else if (letter.text("kind").equals("graded_return")) {
            letter.optionalText("capacity").ifPresent(words -> texts.put("limited", words)); // hours, limits and who agreed come from the plan itself
        } else {
            Entry note = visit.entry("note").orElse(null);
            texts.put("request", letter.optionalText("ask").orElse("I would be grateful for your view."));
            texts.put("findings", note == null ? "See the record." : note.optionalText("subjective").orElse("") + " " + note.optionalText("objective").orElse(""));
            texts.put("onset", "Since " + Dates.inLetter(LocalDate.parse(demo.entry("case").orElseThrow().text("onset"))) + ".");
            texts.put("done", "Treatment is stopped. " + (note == null ? "" : note.optionalText("plan").orElse("").replaceFirst("^No treatment\\b[^.]*\\. ", ""))
                    + " The worker knows why this letter is sent.");
        }
        return new DemoLetterWords(texts, tables);
    }

    /** What a report on the course says beyond what the case file gives to it. */
    private static void report(Entry visit, Entry letter, Map<String, String> texts) {
        Entry note = visit.entry("note").orElse(null);
        String plan = note == null ? "" : note.optionalText("plan").orElse("");
        if (note != null) {
            note.optionalText("assessment").ifPresent(words -> texts.put("examination", words));
        }
        if (letter.text("kind").equals("progress_report")) {
            texts.put("plan", plan.isEmpty() ? "The plan goes on as it is." : plan);
            if (!visit.has("next_review")) {
                texts.put("reply", "No further review is planned here.");
            }
        } else {
            texts.put("ending", "Treatment ends by agreement, on " + shown(letter, "signed") + ".");
            texts.put("self_care", plan.isEmpty() ? "Exercises go on at home." : plan);
            texts.put("open_items", "None.");
        }
    }

    private static List<String> changes(Entry letter) {
        List<String> cells = new ArrayList<>();
        for (Entry change : letter.entries("modifications")) {
            cells.addAll(List.of(change.text("what"), "", shown(change, "from"), shown(change, change.has("until") ? "until" : "review")));
        }
        return cells.isEmpty() ? List.of("No change asked for", "", "", "") : cells;
    }

    private static List<String> equipment(Entry letter) {
        List<String> cells = new ArrayList<>();
        letter.entries("equipment").forEach(item -> cells.addAll(List.of(item.text("item"), item.text("reason"), "", item.text("priority"))));
        return cells;
    }

    private static String shown(Entry entry, String key) {
        String day = entry.optionalText(key).orElse("");
        return day.matches("\\d{4}-\\d{2}-\\d{2}") ? Dates.inLetter(LocalDate.parse(day)) : "";
    }
}
