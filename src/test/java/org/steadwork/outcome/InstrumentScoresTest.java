package org.steadwork.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.steadwork.content.Content;
import org.steadwork.content.ContentException;
import org.steadwork.content.Entry;
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

    @ParameterizedTest(name = "{0} {1}: {2} to {3}, {4}")
    @CsvFileSource(resources = "screens.csv", numLinesToSkip = 1)
    void screensNameEveryGroupThatTheAnswersAllow(String key, String answers, double low, double high, String groups, Double part, String tag,
            String note) {
        Instrument instrument = INSTRUMENTS.get(key);
        Scored scored = instrument.score(answers(answers));
        assertEquals(low, scored.low().getAsDouble());
        assertEquals(high, scored.high().getAsDouble());
        assertEquals(low == high && !answers.contains("_"), scored.value().isPresent());
        assertEquals(List.of(groups.split(";")), instrument.groups(scored));
        assertFalse(scored.estimated(), "a screen never fills in");
        if (part != null) {
            assertEquals(part, scored.parts().values().iterator().next());
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "surveys.csv", numLinesToSkip = 1)
    void aSurveyCountsRegionsAndHasNoTotal(String answers, Double trouble, Double kept, Double sevenDays, String answered, Integer refusedItem,
            String tag, String note) {
        Instrument nmq = INSTRUMENTS.get("nmq");
        if (refusedItem != null) {
            assertEquals(refusedItem, assertThrows(InvalidAnswer.class, () -> nmq.score(answers(answers))).itemNumber());
            return;
        }
        Scored scored = nmq.score(answers(answers));
        assertTrue(scored.value().isEmpty());
        assertEquals(List.of(trouble, kept, sevenDays), List.copyOf(scored.parts().values()));
        assertTrue(scored.working().contains(" of " + answered + " regions answered"), scored.working());
    }

    @ParameterizedTest(name = "{0} refuses {1}: item {2}")
    @CsvFileSource(resources = "refused.csv", numLinesToSkip = 1)
    void anInvalidAnswerIsRefusedWithItemAndRange(String key, String typed, int item, String range) {
        List<Item> items = INSTRUMENTS.get(key).items();
        InvalidAnswer refused = assertThrows(InvalidAnswer.class, () -> ItemAnswers.read(items, List.of(typed.split(" "))));
        assertEquals(item, refused.itemNumber());
        assertTrue(refused.getMessage().contains(range), refused.getMessage());
        assertTrue(refused.getMessage().toLowerCase(Locale.ROOT).contains("item " + item), refused.getMessage());
    }

    @Test
    void everyInstrumentHasThreeVectorsOrMore() throws IOException {
        Map<String, Long> vectors = new HashMap<>();
        for (String file : List.of("scores.csv", "screens.csv")) {
            vectors(file).forEach(row -> vectors.merge(row.text("instrument"), 1L, Long::sum));
        }
        vectors.merge("nmq", (long) vectors("surveys.csv").size(), Long::sum);
        for (String key : INSTRUMENTS.keySet()) {
            assertTrue(vectors.getOrDefault(key, 0L) >= 3, key + " has " + vectors.getOrDefault(key, 0L) + " vectors");
        }
        for (String file : List.of("grip.csv", "motions.csv", "scoring/goals.csv")) {
            assertTrue(vectors(file).size() >= 3, file);
        }
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

    // what may not be shown without a licence is not in the content at all
    @Test
    void licensedFormsAreItemNumbers() {
        List<String> licensed = INSTRUMENTS.values().stream().filter(instrument -> instrument.form() == Instrument.Form.LICENSED_FORM)
                .map(Instrument::key).toList();
        assertEquals(List.of("mskhq", "startback", "startmsk"), licensed);
        for (String key : licensed) {
            assertTrue(INSTRUMENTS.get(key).items().stream().allMatch(item -> item.topic().isEmpty()), key);
            assertTrue(INSTRUMENTS.get(key).form().notice().contains("the clinic must hold"), key);
        }
    }

    @Test
    void anInstrumentIsAddedByAFileAlone(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("reach.yaml");
        Files.writeString(file, """
                key: reach
                name: "Reaching overhead, a scale made up for this test"
                label: "Reaching"
                version: "1"
                direction: higher_better
                lowest: 0
                highest: 8
                decimals: 1
                use: outcome
                form: own_words
                every_days: 14
                schedule: "every 2 weeks"
                permission: "made up, free"
                source: "made up for this test"
                rule:
                  name: sum_of_items
                  minimum_answered: 1
                  missing: prorate
                items:
                  - number: 1
                    topic: "shelf"
                    min: 0
                    max: 4
                  - number: 2
                    topic: "ceiling"
                    min: 0
                    max: 4
                thresholds:
                  - kind: error
                    value: 2
                    level: MDC90
                    lead: yes
                    source: "made up for this test"
                    tag: P
                """);
        try (Reader reader = Files.newBufferedReader(file)) {
            Instrument reach = InstrumentContent.instruments(Content.yaml(file.toString(), reader)).get(0);
            assertEquals(6, reach.score(List.of(4, 2)).value().getAsDouble());
            assertEquals(4, reach.score(Arrays.asList(null, 2)).value().getAsDouble());
            assertEquals(ChangeVerdict.Kind.WORSE, ChangeVerdict.of(reach, "shoulder", 6, 4).kind());
            assertEquals("6.0", Shown.value(reach, 6));
        }
    }

    @Test
    void aWrongFileIsNamedWithItsLine(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("wrong.yaml");
        String ndi = new String(InstrumentScoresTest.class.getResourceAsStream("/content/instruments/ndi.yaml").readAllBytes(), StandardCharsets.UTF_8);
        for (String[] change : List.of(new String[] {"highest: 100", "highest: 50"}, new String[] {"tag: S", "tag: X"},
                new String[] {"decimals: 0", "decimals: 7"}, new String[] {"use: outcome", "use: survey"}, new String[] {"name: sum_percent", "name: sum"},
                new String[] {"form: official_form", "form: licensed_form"},
                new String[] {"form: official_form", "form: official_form\nphone: {heading: x, asks: [a], low: l, high: h}"},
                new String[] {"form: official_form", "form: own_words\nphone: {heading: x, asks: [a], low: l, high: h}"})) {
            Files.writeString(file, ndi.replaceFirst(change[0], change[1]));
            try (Reader reader = Files.newBufferedReader(file)) {
                String message = assertThrows(ContentException.class, () -> InstrumentContent.instruments(Content.yaml("wrong.yaml", reader)),
                        change[1]).getMessage();
                assertTrue(message.contains("wrong.yaml"), message);
            }
        }
    }

    // one rule of decimals an instrument: 5 and 4.7 on one scale read alike
    @Test
    void decimalsBelongToTheInstrument() {
        Instrument psfs = INSTRUMENTS.get("psfs");
        assertEquals("5.0", Shown.value(psfs, 5));
        assertEquals("4.7", Shown.value(psfs, 14 / 3.0));
        assertEquals("+0.3", Shown.change(psfs, 1 / 3.0));
        assertEquals("0.0", Shown.change(psfs, 0));
        assertEquals("\u22121.0", Shown.change(psfs, -1));
        assertEquals("46\u00a0%", Shown.value(INSTRUMENTS.get("odi21a"), 46));
        assertEquals("44.4\u00a0%", Shown.value(INSTRUMENTS.get("odi21a"), 100.0 * 20 / 45), "a score that was filled in keeps its fraction");
        assertEquals("2.70", Shown.value(INSTRUMENTS.get("bctq_sss"), 2.7));
    }

    private static List<Entry> vectors(String file) throws IOException {
        try (Reader reader = new InputStreamReader(InstrumentScoresTest.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
            return Content.csv(file, reader);
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
