package org.steadwork.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.InvalidAnswer;
import org.steadwork.outcome.scoring.Item;
import org.steadwork.outcome.scoring.ItemAnswers;
import org.steadwork.outcome.scoring.Scored;
import org.steadwork.outcome.scoring.SumPercent;
import org.steadwork.outcome.scoring.Threshold;

class InstrumentScoresTest {

    private static final Map<String, Instrument> INSTRUMENTS = InstrumentContent.read();

    @ParameterizedTest(name = "{0} {1} = {2}")
    @CsvFileSource(resources = "scores.csv", numLinesToSkip = 1)
    void scoresAreThePublishedFormulas(String key, String answers, String score, int digits, String estimated, String tag, String note) {
        Scored scored = INSTRUMENTS.get(key).score(answers(answers));
        if (score.equals("none")) {
            assertTrue(scored.value().isEmpty(), scored.working());
            assertTrue(scored.working().startsWith("No score"), scored.working());
            return;
        }
        double halfOfTheLastDigit = 0.5 * Math.pow(10, -digits) + 1e-9;
        assertEquals(Double.parseDouble(score), scored.value().getAsDouble(), halfOfTheLastDigit);
        assertEquals(estimated.equals("yes"), scored.estimated());
    }

    @ParameterizedTest(name = "{0} {1} to {2} is {3}")
    @CsvFileSource(resources = "bands.csv", numLinesToSkip = 1)
    void bandsAreNamedAndNeverGuessed(String key, double low, double high, String band) {
        Instrument instrument = INSTRUMENTS.get(key);
        String found = instrument.band(low, high).map(b -> b.label()).orElse("none");
        assertEquals(band, found);
    }

    @ParameterizedTest(name = "{0} in {1}: {2} to {3} is {4}")
    @CsvFileSource(resources = "verdicts.csv", numLinesToSkip = 1)
    void errorComesFirstThenImportance(String key, String region, double earlier, double later, ChangeVerdict.Kind verdict) {
        assertEquals(verdict, ChangeVerdict.of(INSTRUMENTS.get(key), region, earlier, later).kind());
    }

    @Test
    void missingRiskItemsGiveBoundsAndNoScore() {
        Scored scored = INSTRUMENTS.get("ompsq_sf").score(answers("8 8 3 4 7 6 8 4 8 _"));
        assertTrue(scored.value().isEmpty());
        assertEquals(64, scored.low().getAsDouble());
        assertEquals(74, scored.high().getAsDouble());
        Scored other = INSTRUMENTS.get("ompsq_sf").score(answers("5 6 7 6 4 _ 5 8 6 5"));
        assertEquals(40, other.low().getAsDouble());
        assertEquals(50, other.high().getAsDouble());
    }

    // Kent and Lauridsen, 23-item version: 17 of 23 answered is 74 of 100, 17 of 20 is 85 of 100 (printed, tag S)
    @Test
    void publishedProratingOfTickedItems() {
        List<Item> items = java.util.stream.IntStream.rangeClosed(1, 23).mapToObj(n -> new Item(n, "topic " + n, 0, 1)).toList();
        SumPercent rule = new SumPercent(1);
        assertEquals(74, rule.score(ItemAnswers.of(items, ticked(17, 23, 23))).value().getAsDouble(), 0.5);
        assertEquals(85, rule.score(ItemAnswers.of(items, ticked(17, 20, 23))).value().getAsDouble(), 0.5);
    }

    @Test
    void anAnswerOutOfRangeNamesItemAndRange() {
        Instrument ndi = INSTRUMENTS.get("ndi");
        InvalidAnswer refused = assertThrows(InvalidAnswer.class, () -> ndi.score(answers("2 1 3 2 2 1 2 6 2 1")));
        assertEquals("Item 8 (driving) must be a whole number from 0 to 5, or left empty. You entered \"6\".", refused.getMessage());
        assertEquals(8, refused.itemNumber());
        InvalidAnswer half = assertThrows(InvalidAnswer.class, () -> ItemAnswers.read(INSTRUMENTS.get("was").items(), List.of("7.5")));
        assertTrue(half.getMessage().contains("from 0 to 10"), half.getMessage());
        assertEquals(-3, ItemAnswers.read(INSTRUMENTS.get("groc15").items(), List.of("\u22123")).values().get(0));
    }

    @Test
    void aScreenHasNoVerdict() {
        assertThrows(IllegalArgumentException.class, () -> ChangeVerdict.of(INSTRUMENTS.get("ompsq_sf"), "neck", 54, 40));
    }

    @Test
    void importanceIsARange() {
        Instrument ndi = INSTRUMENTS.get("ndi");
        List<Threshold> range = ndi.range(Threshold.Kind.IMPORTANCE, "neck", 38);
        assertEquals(List.of(10.0, 11.0, 14.0, 15.0, 19.0), range.stream().map(t -> t.points(38)).toList());
        assertEquals(3, ChangeVerdict.of(ndi, "neck", 38, 24).reached(range));
    }

    @Test
    void aLowBaselineCannotShowImprovement() {
        Instrument rmdq = INSTRUMENTS.get("rmdq24");
        assertFalse(ChangeVerdict.of(rmdq, "low_back", 3, 1).caution().isEmpty());
        assertFalse(ChangeVerdict.of(rmdq, "low_back", 21, 22).caution().isEmpty());
        assertTrue(ChangeVerdict.of(rmdq, "low_back", 12, 8).caution().isEmpty());
    }

    // Stratford 1998: overlapping baseline bands 0-8: 2, 5-12: 4, 9-16: 5, 13-20: 8, 17-24: 8; the nearest middle is a rule of ours
    @Test
    void importanceFollowsTheBaseline() {
        Instrument rmdq = INSTRUMENTS.get("rmdq24");
        assertEquals(List.of(2.0, 2.0, 4.0, 5.0, 8.0, 8.0), List.of(0.0, 6.0, 9.0, 12.0, 16.0, 24.0).stream()
                .map(baseline -> rmdq.importance("low_back", baseline).orElseThrow().value()).toList());
    }

    @Test
    void everyEntryHasItsSource() {
        assertEquals(24, INSTRUMENTS.size());
        for (Instrument instrument : INSTRUMENTS.values()) {
            assertFalse(instrument.source().isBlank(), instrument.key());
            assertFalse(instrument.permission().isBlank(), instrument.key());
            instrument.thresholds().forEach(threshold -> assertFalse(threshold.source().isBlank(), instrument.key()));
            assertTrue(!instrument.outcome() || instrument.thresholds().isEmpty()
                    || instrument.thresholds().stream().anyMatch(Threshold::leads), instrument.key() + " has amounts but none leads");
        }
    }

    private static List<Integer> ticked(int ticked, int answered, int items) {
        List<Integer> answers = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            answers.add(i >= answered ? null : Integer.valueOf(i < ticked ? 1 : 0));
        }
        return answers;
    }

    private static List<Integer> answers(String text) {
        return Arrays.stream(text.split(" ")).map(answer -> answer.equals("_") ? null : Integer.valueOf(answer)).collect(Collectors.toList());
    }
}
