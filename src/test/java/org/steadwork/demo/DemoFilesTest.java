package org.steadwork.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.kernel.Answer;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.scoring.Instrument;

/** The demo's files name only what the clinical content knows, and their arithmetic is right. */
class DemoFilesTest {

    /** Half of the last digit in which the files give a score. */
    private static final double HALF_A_TENTH = 0.05 + 1e-9;

    private static final Entry CLINIC = Content.yaml("demo/clinic.yaml");
    private static final Set<String> ZONES = keys(Content.yaml("body/body-chart.yaml").entries("zones"), "key");
    private static final Set<String> QUESTIONS = keys(Content.csv("red-flags/questions.csv"), "key");
    private static final Set<String> ASKED = asked();
    private static final Set<String> TOKENS = keys(Content.yaml("red-flags/suspensions.yaml").entries("tokens"), "token");
    private static final Set<String> EXERCISES = keys(Content.csv("exercises/exercises.csv"), "key");
    private static final Set<String> CONDITIONS = keys(Content.yaml("exercises/conditions.yaml").entries("conditions"), "key");
    private static final Set<String> CRITERIA = keys(Content.yaml("workplace/criteria.yaml").entries("criteria"), "id");
    private static final Set<String> CATEGORIES = keys(Content.yaml("letters/disclosure.yaml").entries("categories"), "key");
    private static final Set<String> ANSWERS = Arrays.stream(Answer.values()).map(a -> a.name().toLowerCase()).collect(Collectors.toSet());
    private static final Instruments INSTRUMENTS = new Instruments();

    static Stream<Entry> cases() {
        return CLINIC.texts("cases").stream().map(key -> Content.yaml("demo/" + key + ".yaml"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void saysThatItIsInvented(Entry demo) throws IOException {
        try (InputStream in = getClass().getResourceAsStream("/content/" + demo.file())) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(text.startsWith("# INVENTED"), demo.file());
        }
    }

    /** A comma inside a value that is not quoted makes a key of what follows it. */
    @ParameterizedTest
    @MethodSource("cases")
    void everyKeyHasItsValue(Entry demo) {
        for (Entry visit : demo.entries("visits")) {
            visit.entry("workplace").ifPresent(place -> place.entries("observed").forEach(DemoFilesTest::whole));
            for (String list : List.of("flag_actions", "prescriptions", "adherence", "scores", "received", "letters")) {
                visit.entries(list).forEach(DemoFilesTest::whole);
            }
        }
        demo.entries("consents").forEach(DemoFilesTest::whole);
    }

    private static void whole(Entry entry) {
        entry.keys().forEach(key -> assertTrue(entry.has(key),
                () -> entry.file() + ", line " + entry.line() + ": " + key));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void namesOnlyWhatTheContentKnows(Entry demo) {
        Set<String> readers = new HashSet<>(keys(CLINIC.entries("correspondents"), "key"));
        readers.addAll(List.of("employer", "worker"));
        for (Entry consent : demo.entries("consents")) {
            consent.optionalText("recipient").ifPresent(reader -> known(readers, List.of(reader), consent));
            known(CATEGORIES, consent.texts("categories"), consent);
            known(CATEGORIES, consent.texts("ticked"), consent);
        }
        known(CONDITIONS, demo.entry("case").orElseThrow().texts("conditions"), demo);
        for (Entry visit : demo.entries("visits")) {
            visit.entry("symptoms").ifPresent(told -> known(ZONES, keys(told.entries("zones"), "zone"), told));
            visit.entry("red_flags").flatMap(flags -> flags.entry("answers")).ifPresent(answers -> {
                known(ASKED, answers.keys(), answers);
                answers.keys().forEach(key -> known(ANSWERS, List.of(answers.text(key)), answers));
            });
            known(QUESTIONS, keys(visit.entries("flag_actions"), "key"), visit);
            known(EXERCISES, keys(visit.entries("prescriptions"), "exercise"), visit);
            known(EXERCISES, keys(visit.entries("adherence"), "exercise"), visit);
            visit.entry("own_page").ifPresent(page -> {
                page.entries("sessions").forEach(session -> known(EXERCISES, session.entry("done").orElseThrow().keys(), session));
                page.entries("reports").forEach(report -> known(ZONES, keys(report.entries("zones"), "zone"), report));
            });
            visit.entry("workplace").ifPresent(place -> {
                known(CRITERIA, place.texts("findings"), place);
                place.entries("actions").stream().filter(action -> action.has("finding"))
                        .forEach(action -> known(Set.copyOf(place.texts("findings")), List.of(action.text("finding")), action));
            });
            visit.entry("expected").ifPresent(expected -> {
                known(TOKENS, expected.texts("suspended"), expected);
                known(TOKENS, expected.texts("not_suspended"), expected);
                known(EXERCISES, expected.texts("refused"), expected);
                known(EXERCISES, expected.texts("offered"), expected);
            });
            for (Entry letter : visit.entries("letters")) {
                known(readers, List.of(letter.text("recipient")), letter);
                known(CATEGORIES, letter.texts("categories"), letter);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void itsVisitsCountUpAndGoForwardFromTheOpening(Entry demo) {
        LocalDate before = LocalDate.parse(demo.entry("case").orElseThrow().text("opened"));
        List<Entry> visits = demo.entries("visits");
        for (int i = 0; i < visits.size(); i++) {
            assertEquals(i + 1, visits.get(i).integer("number"));
            LocalDate day = LocalDate.parse(visits.get(i).text("date"));
            assertFalse(day.isBefore(before), visits.get(i).file() + ", visit " + (i + 1));
            assertEquals(2030, day.getYear());
            before = day;
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void itsScoresFollowFromTheirItems(Entry demo) {
        for (Entry visit : demo.entries("visits")) {
            for (Entry score : visit.entries("scores")) {
                if (!score.has("items")) {
                    continue;
                }
                Instrument instrument = INSTRUMENTS.find(score.text("instrument")).orElseThrow(() -> score.problem("no such instrument"));
                List<Integer> answers = new ArrayList<>(score.texts("items").stream().map(Integer::valueOf).toList());
                while (answers.size() < instrument.items().size()) {
                    answers.add(null); // activities beyond those the patient named
                }
                OptionalDouble value = instrument.score(answers).value();
                assertTrue(value.isPresent(), () -> score.file() + ", line " + score.line());
                assertEquals(score.number("value"), value.getAsDouble(), HALF_A_TENTH, () -> score.file() + ", line " + score.line());
            }
        }
    }

    /** Questions, facts, and the items of the published rules. */
    private static Set<String> asked() {
        Set<String> keys = new HashSet<>(QUESTIONS);
        keys.addAll(keys(Content.yaml("red-flags/facts.yaml").entries("facts"), "key"));
        Content.yaml("red-flags/published-rules.yaml").entries("rules").forEach(rule -> keys.addAll(keys(rule.entries("items"), "key")));
        return keys;
    }

    private static void known(Set<String> all, Collection<String> named, Entry where) {
        for (String key : named) {
            if (!all.contains(key)) {
                throw where.problem("the content knows no '" + key + "'");
            }
        }
    }

    private static Set<String> keys(List<Entry> entries, String key) {
        return entries.stream().map(entry -> entry.text(key)).collect(Collectors.toSet());
    }
}
