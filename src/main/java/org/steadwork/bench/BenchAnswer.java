package org.steadwork.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a calculator answers: the values that lead, what they mean in words, the working, notes, a drawing, and the same for machines.
 * Made by {@link #of(String)} and the methods that add to it.
 */
public final class BenchAnswer {

    /** A value that leads, as it is shown: rounded, with its unit. */
    public record Headline(String label, String value, String unit) {
    }

    /** One step of the working: what was found, by which rule in words, the value as shown and its unit. */
    public record WorkingStep(String what, String rule, String value, String unit) {
    }

    /** How a result stands, for its mark; the band's words say it as well. */
    public enum Mark {
        IN("in"), EDGE("near"), OUT("out"), NONE("none");

        private final String css;

        Mark(String css) {
            this.css = css;
        }

        public String css() {
            return css;
        }
    }

    private final String band;
    private Mark mark = Mark.NONE;
    private final List<Headline> headlines = new ArrayList<>();
    private final List<WorkingStep> working = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final Map<String, Object> result = new LinkedHashMap<>();
    private String drawing = "";

    private BenchAnswer(String band) {
        this.band = band;
    }

    /** Begins an answer with what it means in words. */
    public static BenchAnswer of(String band) {
        return new BenchAnswer(band);
    }

    public BenchAnswer marked(Mark how) {
        mark = how;
        return this;
    }

    /** Adds a value that leads, as it is shown. */
    public BenchAnswer headline(String label, String value, String unit) {
        headlines.add(new Headline(label, value, unit));
        return this;
    }

    public BenchAnswer step(String what, String rule, String value, String unit) {
        working.add(new WorkingStep(what, rule, value, unit));
        return this;
    }

    /** Adds a sentence that belongs to the result, such as "The table is from memory." */
    public BenchAnswer note(String text) {
        notes.add(text);
        return this;
    }

    /** Sets the drawing: SVG of the package drawing, never anything a person typed. */
    public BenchAnswer drawing(String svg) {
        drawing = svg;
        return this;
    }

    /** Adds to the result for machines: numbers not rounded, texts, lists and maps; null for a value that does not exist. */
    public BenchAnswer result(String name, Object value) {
        if (value instanceof Double number && !Double.isFinite(number)) {
            throw new IllegalStateException(name + " is not a finite number");
        }
        result.put(name, value);
        return this;
    }

    public String band() {
        return band;
    }

    public Mark mark() {
        return mark;
    }

    public List<Headline> headlines() {
        return headlines;
    }

    public List<WorkingStep> working() {
        return working;
    }

    public List<String> notes() {
        return notes;
    }

    public String drawing() {
        return drawing;
    }

    public Map<String, Object> result() {
        return result;
    }
}
