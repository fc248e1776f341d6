package org.steadwork.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.steadwork.body.BodyChart;
import org.steadwork.body.SymptomKind;
import org.steadwork.drawing.BodyChartContent;
import org.steadwork.kernel.Answer;

class SymptomChangesTest {

    private static final SymptomPattern NOTHING = SymptomPattern.notAsked();

    private final BodyChart chart = new BodyChartContent().chart();

    private List<String> words(List<RegionReading> then, List<RegionReading> now) {
        return SymptomChanges.between(NOTHING, then, NOTHING, now, chart).stream()
                .map(change -> change.about() + ": " + String.join("; ", change.words())).toList();
    }

    private static RegionReading reading(String zone, Integer now, Integer worst, SymptomKind... kinds) {
        return new RegionReading(zone, now, worst, null, null, null, Set.of(kinds), null, null);
    }

    @Test
    void aDifferenceIsSignedWithATrueMinus() {
        assertEquals(List.of("Low back: now 6 → 4 (−2); worst 7 → 8 (+1)"),
                words(List.of(reading("low_back", 6, 7)), List.of(reading("low_back", 4, 8))));
    }

    @Test
    void toNotAskedThereIsNoDifference() {
        assertEquals(List.of("Low back: now 6 → not asked; worst not asked → 0"),
                words(List.of(reading("low_back", 6, null)), List.of(reading("low_back", null, 0))));
    }

    @Test
    void zonesComeAndGoInTheOrderOfTheChart() {
        assertEquals(List.of("Back of neck: newly marked, pain 3 of 10, ache", "Right calf: no longer marked"),
                words(List.of(reading("calf_r", 2, null)), List.of(reading("neck", 3, null, SymptomKind.ACHE))));
    }

    @Test
    void kindsAreSaidBothWays() {
        assertEquals(List.of("Low back: kind not said → ache, tingling or numb"), words(List.of(reading("low_back", 3, null)),
                List.of(reading("low_back", 3, null, SymptomKind.TINGLING_OR_NUMB, SymptomKind.ACHE))));
    }

    @Test
    void thePatternIsComparedToo() {
        SymptomPattern now = new SymptomPattern(CourseOverDay.WORSE_ON_RISING, Answer.YES, Answer.NOT_ASKED, "sitting", null, null);
        List<SymptomChanges.Change> changes = SymptomChanges.between(NOTHING, List.of(), now, List.of(), chart);
        assertEquals(List.of("course over the day not asked → worse on rising", "wakes at night not asked → yes",
                "worse with not noted → “sitting”"), changes.get(0).words());
    }

    @Test
    void equalReportsDifferInNothing() {
        List<RegionReading> same = List.of(reading("low_back", 3, 5, SymptomKind.ACHE));
        assertTrue(words(same, same).isEmpty());
    }
}
