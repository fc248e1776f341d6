package org.steadwork.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.steadwork.body.Side;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.outcome.scoring.GoalAttainment;
import org.steadwork.outcome.scoring.GripResult;
import org.steadwork.outcome.scoring.GripTrial;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.NormGroup;
import org.steadwork.outcome.scoring.PercentChange;
import org.steadwork.outcome.scoring.TheilSen;

/**
 * Our scores beside those of a computation in R that shares nothing with ours but the answers. The kept results of R are checked on every
 * run; with {@code -Dsteadwork.checks=FOLDER} the answers for a new run of {@code docs/checks/scoring.R} are written there.
 */
class ScoringInRTest {

    private static final Map<String, Instrument> INSTRUMENTS = InstrumentContent.read();
    private static final Path KEPT = Path.of("docs/checks/scoring-r.csv");
    private static final Path KEPT_OTHERS = Path.of("docs/checks/scoring-others-r.csv");
    private static final double TOLERANCE = 1e-9;
    private static final int SETS = 1000;
    private static final long SEED = 20261125;

    @Test
    void ourScoresAreThoseOfR() throws IOException {
        Map<String, Integer> checked = new HashMap<>();
        for (Entry row : rows(KEPT)) {
            Instrument instrument = INSTRUMENTS.get(row.text("instrument"));
            List<Integer> answers = whole(row.text("answers"));
            String ours = RandomAnswers.outcome(instrument, answers);
            String theirs = List.of("value", "low", "high", "parts", "groups").stream().map(key -> row.optionalText(key).orElse(""))
                    .collect(Collectors.joining(","));
            assertSame(theirs, ours, instrument.key() + " " + row.text("answers"));
            checked.merge(instrument.key(), 1, Integer::sum);
        }
        INSTRUMENTS.keySet().forEach(key -> assertEquals(50, checked.getOrDefault(key, 0), key));
    }

    @Test
    void ourOtherFiguresAreThoseOfR() throws IOException {
        Map<String, Integer> checked = new HashMap<>();
        for (Entry row : rows(KEPT_OTHERS)) {
            String ours = other(row.text("what"), row.text("first"), row.optionalText("second").orElse(""));
            assertSame(row.optionalText("result").orElse(""), ours, row.text("what") + " " + row.text("first") + " " + row.optionalText("second"));
            checked.merge(row.text("what"), 1, Integer::sum);
        }
        assertEquals(Map.of("trend", 50, "goals", 50, "percent", 50, "grip", 50), checked);
    }

    @Test
    @EnabledIfSystemProperty(named = "steadwork.checks", matches = ".+")
    void writeTheAnswersForR() throws IOException {
        Path folder = Path.of(System.getProperty("steadwork.checks"));
        List<String> lines = new ArrayList<>(List.of("instrument,answers,value,low,high,parts,groups"));
        for (Instrument instrument : INSTRUMENTS.values()) {
            for (List<Integer> answers : RandomAnswers.of(instrument, SETS, SEED)) {
                lines.add(instrument.key() + "," + RandomAnswers.text(answers) + "," + RandomAnswers.outcome(instrument, answers));
            }
        }
        Files.write(folder.resolve("scoring-answers.csv"), lines);
        List<String> others = new ArrayList<>(List.of("what,first,second,result"));
        Random random = new Random(SEED);
        for (int i = 0; i < SETS; i++) {
            int points = 3 + random.nextInt(10);
            List<Integer> weeks = IntStream.range(0, 2 * points).boxed().filter(week -> random.nextBoolean() || week < 3).limit(points).toList();
            add(others, "trend", RandomAnswers.text(weeks), randomly(random, weeks.size(), 0, 20));
            int goals = 1 + random.nextInt(6);
            add(others, "goals", gaps(random, randomly(random, goals, -2, 2)), randomly(random, goals, 1, 9));
            add(others, "percent", randomly(random, 1, 0, 10), randomly(random, 1, 0, 10));
            add(others, "grip", gaps(random, randomly(random, 3, 5, 60)), (random.nextBoolean() ? "men" : "women") + " "
                    + (random.nextBoolean() ? "right" : "left") + " " + (15 + random.nextInt(80)));
        }
        Files.write(folder.resolve("scoring-others.csv"), others);
        assertTrue(Files.size(folder.resolve("scoring-answers.csv")) > 0);
    }

    private static void add(List<String> lines, String what, String first, String second) {
        lines.add(what + "," + first + "," + second + "," + other(what, first, second));
    }

    private static String other(String what, String first, String second) {
        return switch (what) {
            case "trend" -> {
                TheilSen trend = TheilSen.of(numbers(first), numbers(second));
                yield trend.slope() + " " + trend.intercept() + " " + trend.otherIntercept() + (Double.isNaN(trend.tauB()) ? "" : " " + trend.tauB());
            }
            case "goals" -> whole(first).stream().allMatch(rating -> rating == null) ? ""
                    : String.valueOf(GoalAttainment.tScore(whole(first), whole(second)));
            case "percent" -> text(PercentChange.ofPain(numbers(first)[0], numbers(second)[0]).value());
            default -> grip(whole(first), second.split(" "));
        };
    }

    private static String grip(List<Integer> trials, String[] who) {
        GripResult result = MeasuredContent.grip().measure(Side.valueOf(who[1].toUpperCase(Locale.ROOT)),
                trials.stream().map(kg -> kg == null ? GripTrial.without(GripTrial.STOPPED_FOR_PAIN) : GripTrial.of(kg)).toList(),
                OptionalInt.of(Integer.parseInt(who[2])), Optional.of(NormGroup.valueOf(who[0].toUpperCase(Locale.ROOT))));
        return (text(result.meanKg()) + " " + text(result.z()) + " " + text(result.percentOfNorm())).strip();
    }

    private static void assertSame(String theirs, String ours, String what) {
        String[] expected = theirs.split("[ ,]", -1);
        String[] actual = ours.split("[ ,]", -1);
        assertEquals(expected.length, actual.length, what + ": R says \"" + theirs + "\", we say \"" + ours + "\"");
        for (int i = 0; i < expected.length; i++) {
            if (expected[i].matches("-?[0-9.]+(e-?[0-9]+)?") && !actual[i].isEmpty()) {
                assertEquals(Double.parseDouble(expected[i]), Double.parseDouble(actual[i]), TOLERANCE, what);
            } else {
                assertEquals(expected[i], actual[i], what);
            }
        }
    }

    private static List<Entry> rows(Path file) throws IOException {
        try (Reader reader = Files.newBufferedReader(file)) {
            return Content.csv(file.toString(), reader);
        }
    }

    private static String randomly(Random random, int count, int from, int to) {
        return IntStream.range(0, count).mapToObj(i -> String.valueOf(from + random.nextInt(to - from + 1))).collect(Collectors.joining(" "));
    }

    private static String gaps(Random random, String numbers) {
        return Arrays.stream(numbers.split(" ")).map(number -> random.nextInt(5) == 0 ? "_" : number).collect(Collectors.joining(" "));
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private static List<Integer> whole(String text) {
        return Arrays.stream(text.split(" ")).map(number -> number.equals("_") ? null : Integer.valueOf(number)).collect(Collectors.toList());
    }

    private static String text(OptionalDouble value) {
        return value.isPresent() ? String.valueOf(value.getAsDouble()) : "";
    }
}
