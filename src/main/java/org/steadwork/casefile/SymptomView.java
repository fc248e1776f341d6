package org.steadwork.casefile;

import java.util.List;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/**
 * What the page of symptoms shows.
 *
 * @param action  where the form is sent
 * @param chart   the body chart, interactive
 * @param added   key of the zone whose row was just added, or null
 * @param report  the stored report that is shown, null for a new one
 * @param start   the latest report, from which today's may be started; null when today has one or the case is closed
 * @param compare what differs from the report before, null when there is none
 * @param theirs  on a conflict, what differs between what is stored and what was typed
 */
public record SymptomView(String action, Form form, String chart, ChartKey key, List<RegionRow> regions, RegionRow blank, String added,
        List<ZoneGroup> zoneGroups, Answers answers, SymptomReport report, SymptomReport start, Comparison compare,
        List<SymptomChanges.Change> theirs, List<PastReport> past) {

    /** The key to the drawing. */
    public record ChartKey(String ramp, List<Swatch> swatches) {
    }

    public record Swatch(String svg, String label) {
    }

    /** The zones of one view, for the list. */
    public record ZoneGroup(String label, List<Option> zones) {
    }

    /** What the choices offer. */
    public record Answers(List<Option> course, List<Option> fourAnswers) {
    }

    /** A zone with its fields. */
    public record RegionRow(String key, String label, List<KindBox> kinds, List<ScaleRow> scales, boolean contradiction) {

        public String sinceField() {
            return "since-" + key;
        }

        public String patternField() {
            return "pattern-" + key;
        }
    }

    public record KindBox(String name, String value, String label, boolean ticked) {
    }

    /**
     * One scale of one zone.
     *
     * @param current what is chosen: a number as text, or not_asked
     * @param was     the answer of the report before, in words, or null
     * @param pain    true for the scale that the drawing shows
     * @param least   what 0 means, null where the scale below says it
     */
    public record ScaleRow(String name, String label, String spoken, List<String> cells, String current, String was, boolean pain,
            String least, String most, String problem) {
    }

    /** Two small drawings and the differences in words. */
    public record Comparison(SymptomReport before, String beforeDrawing, String nowDrawing, String sides,
            List<SymptomChanges.Change> changes) {
    }

    /** A line of the list of reports. */
    public record PastReport(SymptomReport report, String words, boolean shown) {
    }

    /** True when the form holds something already, so that starting again would lose it. */
    public boolean begun() {
        return report == null && !regions.isEmpty();
    }

    /** Fields of the row that the script copies. */
    public Form blankForm() {
        return Form.empty();
    }
}
