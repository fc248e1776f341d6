package org.steadwork.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An answer as a document: what the API sends, and what a case keeps so that it can be shown later as it was then. */
public final class AnswerDocument {

    private AnswerDocument() {
    }

    public static Map<String, Object> of(Calculator calculator, BenchAnswer answer) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("calculator", calculator.key());
        document.put("title", calculator.title());
        document.put("limits", calculator.limits());
        document.put("standing", calculator.standing());
        document.put("headlines", answer.headlines());
        document.put("band", answer.band());
        document.put("mark", answer.mark().name());
        document.put("result", answer.result());
        document.put("working", answer.working());
        document.put("notes", answer.notes());
        document.put("drawing", answer.drawing().isEmpty() ? null : answer.drawing());
        document.put("sources", calculator.sources());
        return document;
    }

    /** Reads back what a page shows of a document that was kept; the result for machines stays in the document. */
    public static BenchAnswer read(Map<String, Object> document) {
        BenchAnswer answer = BenchAnswer.of((String) document.get("band")).marked(BenchAnswer.Mark.valueOf((String) document.get("mark")));
        maps(document, "headlines").forEach(one -> answer.headline(one.get("label"), one.get("value"), one.get("unit")));
        maps(document, "working").forEach(one -> answer.step(one.get("what"), one.get("rule"), one.get("value"), one.get("unit")));
        texts(document, "notes").forEach(answer::note);
        return document.get("drawing") instanceof String drawing ? answer.drawing(drawing) : answer;
    }

    @SuppressWarnings("unchecked")
    public static List<String> texts(Map<String, Object> document, String name) {
        return (List<String>) document.getOrDefault(name, List.of());
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, String>> maps(Map<String, Object> document, String name) {
        return (List<Map<String, String>>) document.getOrDefault(name, List.of());
    }
}
