package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.steadwork.body.Zone;
import org.steadwork.content.Content;
import org.steadwork.content.ContentException;
import org.steadwork.drawing.BodyChartContent;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Recipient;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.scoring.Instrument;

class LetterContentTest {

    private static final Path KINDS = Path.of("shared/letters/kinds");
    private final Matrix matrix = DisclosureContent.read();
    private final LetterKinds kinds = LetterKinds.read(matrix);
    private final WatchWords watchWords = WatchWords.read();

    private LetterKind kind(String key) {
        return kinds.find(key).orElseThrow();
    }

    @Test
    void everyFileIsListedAndHasItsTemplate() throws IOException {
        try (var files = Files.list(KINDS)) {
            Set<String> keys = files.map(file -> file.getFileName().toString().replace(".yaml", "")).filter(key -> !key.equals("index"))
                    .collect(Collectors.toSet());
            assertEquals(kinds.all().stream().map(LetterKind::key).collect(Collectors.toSet()), keys);
        }
        for (LetterKind kind : kinds.all()) {
            assertTrue(Files.exists(Path.of("templates/letter/" + kind.key() + ".html")), kind.key());
        }
    }

    @Test
    void standingWordsCannotBeTakenOutOfTheContent() throws IOException {
        for (String key : List.of("urgent_referral", "employer_report", "graded_return", "routine_referral", "progress_report", "discharge_summary",
                "attendance_confirmation")) {
            String file = Files.readString(KINDS.resolve(key + ".yaml"));
            for (Standing standing : Standing.requiredFor(kind(key).recipients())) {
                String without = file.replace("standing: " + standing.name().toLowerCase(), "required: no");
                assertFalse(without.equals(file));
                ContentException problem = assertThrows(ContentException.class,
                        () -> LetterKinds.kind(Content.yaml(key + ".yaml", new StringReader(without)), matrix));
                assertTrue(problem.getMessage().contains("not removed"), problem.getMessage());
            }
        }
    }

    @Test
    void standingWordsCanBeReworded() throws IOException {
        String file = Files.readString(KINDS.resolve("employer_report.yaml"));
        String reworded = file.replace("start: It is not a medical certificate.", "start: Please note that this is not a medical certificate of any kind.");
        assertFalse(reworded.equals(file));
        LetterKind kind = LetterKinds.kind(Content.yaml("x.yaml", new StringReader(reworded)), matrix);
        assertTrue(kind.section("certificate").orElseThrow().start().startsWith("Please note"));
        String emptied = file.replace("start: It is not a medical certificate.", "start: Yours.");
        assertThrows(ContentException.class, () -> LetterKinds.kind(Content.yaml("x.yaml", new StringReader(emptied)), matrix));
    }

    @Test
    void aSectionThatNeverGoesToItsReaderIsRefused() throws IOException {
        String file = Files.readString(KINDS.resolve("employer_report.yaml")).replace("information: attendance", "information: pain_scores");
        ContentException problem = assertThrows(ContentException.class,
                () -> LetterKinds.kind(Content.yaml("employer_report.yaml", new StringReader(file)), matrix));
        assertTrue(problem.getMessage().contains("never goes to an employer"), problem.getMessage());
    }

    @Test
    void whoElseMayBeWrittenToIsForTheWorkerAlone() throws IOException {
        for (String key : RecordFacts.NAMES_READERS) {
            String file = Files.readString(KINDS.resolve("graded_return.yaml")).replace("- key: agreed", "- key: " + key);
            ContentException problem = assertThrows(ContentException.class, () -> LetterKinds.kind(Content.yaml("graded_return.yaml", new StringReader(file)), matrix));
            assertTrue(problem.getMessage().contains("for the worker alone"), problem.getMessage());
        }
        assertTrue(RecordFacts.NAMES_READERS.stream().allMatch(key -> kind("record_copy").section(key).isPresent()));
    }

    @Test
    void aDraftStartsEmptyAndTakesUpOnlyWhatTheReaderMayHave() {
        List<LetterFact> facts = List.of(
                new LetterFact(InformationCategory.FUNCTIONAL_CAPACITY, "work_status", "Full hours and duties", "work status"),
                new LetterFact(InformationCategory.SYMPTOMS, "symptoms", "Ache in the right shoulder", "symptom report"),
                new LetterFact(InformationCategory.OUTCOME_SCORES, "scores", "NDI 34 of 100", "score"));
        Draft draft = new Composer(matrix).draft(kind("employer_report"), Recipient.EMPLOYER, Set.of(), facts, new CaseValues());
        String all = String.join("\n", draft.texts().values());
        assertTrue(all.contains("Full hours and duties"));
        assertFalse(all.contains("shoulder") || all.contains("NDI"), all);
        assertFalse(draft.texts().containsKey("symptoms"));
        assertEquals(List.of("Ache in the right shoulder", "NDI 34 of 100"), draft.heldBack().stream().map(Draft.HeldBack::what).toList());
        assertTrue(draft.heldBack().get(1).reason().contains("never"), draft.heldBack().get(1).reason());

        Draft ticked = new Composer(matrix).draft(kind("employer_report"), Recipient.EMPLOYER,
                Set.of(InformationCategory.SYMPTOMS, InformationCategory.OUTCOME_SCORES), facts, new CaseValues());
        assertEquals("Ache in the right shoulder", ticked.texts().get("symptoms"));
        assertEquals(List.of("NDI 34 of 100"), ticked.heldBack().stream().map(Draft.HeldBack::what).toList());
    }

    @Test
    void whatIsNotKnownBecomesAPlaceholder() {
        CaseValues values = new CaseValues().with("patient", Optional.of("Ada Quill"));
        assertEquals("Ada Quill agreed on [consent date].", values.fill("{patient} agreed on {consent_date}."));
    }

    @Test
    void wordsThatGiveACategoryAwayAreFoundAsWholeWordsOnly() {
        assertEquals(Set.of("Neck", "wrists"), watchWords.in("Neck and wrists, not necklace", InformationCategory.SYMPTOMS));
        assertTrue(watchWords.in("No lifting above shoulder height; neckties are fine", InformationCategory.SYMPTOMS).isEmpty());
        assertEquals(Set.of("shoulder"), watchWords.in("above shoulder height because of the shoulder", InformationCategory.SYMPTOMS));
        assertEquals(Set.of("7/10"), watchWords.in("was 7/10 on 7/10/2026", InformationCategory.PAIN_SCORES));
        assertEquals(Set.of("QuickDASH"), watchWords.in("QuickDASH fell", InformationCategory.OUTCOME_SCORES));
        assertTrue(watchWords.in("emergency exit", InformationCategory.RED_FLAG_RESULT).isEmpty());
        assertEquals(Set.of("carpal tunnel"), watchWords.in("carpal tunnel", InformationCategory.DIAGNOSIS));
    }

    @Test
    void everyZoneAndRegionOfTheBodyIsAWatchedWord() {
        for (Zone zone : new BodyChartContent().chart().zones()) {
            assertFalse(watchWords.in("It is felt in the " + zone.label().toLowerCase(), InformationCategory.SYMPTOMS).isEmpty(), zone.label());
        }
    }

    @Test
    void everyInstrumentIsAWatchedName() {
        for (Instrument instrument : new Instruments().all()) {
            assertFalse(watchWords.in(instrument.name(), InformationCategory.OUTCOME_SCORES).isEmpty()
                    && watchWords.in(instrument.name(), InformationCategory.PAIN_SCORES).isEmpty(), instrument.name());
        }
    }

    private List<Check> check(LetterKind kind, Map<String, String> texts, Set<InformationCategory> ticked) {
        Recipient recipient = kind.recipients().iterator().next();
        return new TextChecks(matrix, watchWords).check(new Composer(matrix).sections(kind, recipient, ticked), texts, recipient, ticked);
    }

    private Map<String, String> goodReport() {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("purpose", "Ada Quill agreed that this report may be sent to you.");
        texts.put("request", "I ask for a headset by 4 December 2026.");
        texts.put("work_status", "Full hours and duties.");
        texts.put("can_do", "She can sit 45 minutes at a time and lift 5 kg.");
        texts.put("modifications", "Headset\tfor 2 h of calls\t4 Dec 2026\t15 Jan 2027");
        texts.put("next", "I will review this on 15 January 2027.");
        texts.put("advisory", kind("employer_report").section("advisory").orElseThrow().start());
        texts.put("certificate", kind("employer_report").section("certificate").orElseThrow().start());
        return texts;
    }

    @Test
    void aGoodReportPassesEveryCheck() {
        List<Check> checks = check(kind("employer_report"), goodReport(), Set.of());
        assertTrue(checks.stream().noneMatch(c -> c.stops() || c.asks()), checks.toString());
    }

    @Test
    void eachFaultIsFound() {
        assertFault("must", Check.Level.STOP, "can_do", " ", Set.of());
        assertFault("placeholders", Check.Level.STOP, "can_do", "She can lift [amount] kg", Set.of());
        assertFault("standing-certificate", Check.Level.STOP, "certificate", "Yours sincerely", Set.of());
        assertFault("words-symptoms", Check.Level.ASK, "can_do", "She can lift 5 kg with the right arm and shoulder", Set.of());
        assertFault("words-diagnosis", Check.Level.ASK, "can_do", "Because of tendinopathy", Set.of());
        assertFault("words-outcome_scores", Check.Level.STOP, "can_do", "The NDI fell", Set.of(InformationCategory.OUTCOME_SCORES));
        assertFault("words-red_flag_result", Check.Level.STOP, "can_do", "A red flag was found", Set.of());
        assertFault("glyphs", Check.Level.STOP, "can_do", "王", Set.of());
        assertFault("testable-modifications", Check.Level.LOOK, "modifications", "Headset\t\t\t", Set.of());
        assertFault("length", Check.Level.LOOK, "can_do", "word ".repeat(21), Set.of());
    }

    @Test
    void aTickCoversItsWordsAndNoOthers() {
        Map<String, String> texts = goodReport();
        texts.put("can_do", "The right shoulder tires; diagnosis tendinopathy.");
        List<Check> checks = check(kind("employer_report"), texts, Set.of(InformationCategory.SYMPTOMS));
        assertTrue(checks.stream().noneMatch(c -> c.key().equals("words-symptoms")));
        assertTrue(checks.stream().anyMatch(c -> c.key().equals("words-diagnosis") && c.asks()));
    }

    private void assertFault(String key, Check.Level level, String section, String text, Set<InformationCategory> ticked) {
        Map<String, String> texts = goodReport();
        texts.put(section, text);
        List<Check> checks = check(kind("employer_report"), texts, ticked);
        assertTrue(checks.stream().anyMatch(c -> c.key().equals(key) && c.level() == level), key + " not in " + checks);
    }

    @Test
    void tablesAreKeptAsTextAndComeBack() {
        String text = TableText.of(List.of("a", "b\tc", "", " ", "d", "e"), 2);
        assertEquals("a\tb c\nd\te", text);
        assertEquals(List.of(List.of("a", "b c"), List.of("d", "e")), TableText.rows(text, 2));
        assertEquals(List.of(List.of("only", "")), TableText.rows("only", 2));
        assertEquals("a\tb\nc", TableText.of(List.of("a", "b", "c"), 2));
    }
}
