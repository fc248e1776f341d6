package org.steadwork.outcome;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.steadwork.measure.BenchmarkPage;
import org.steadwork.outcome.scoring.ChangeReading;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Series;

/**
 * Measures scoring and change for a case of twelve visits, each with a back questionnaire of ten items and three pain ratings, and beside
 * it the floor: the same sums, slopes and comparisons on plain arrays without checks, thresholds or words.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ScoringBench {

    private static final int VISITS = 12;
    private static final double LIMIT_MICROSECONDS = 100;
    private static final LocalDate START = LocalDate.of(2030, 9, 2);
    private static final ChangeReading.Beside BESIDE = new ChangeReading.Beside(2, false, OptionalDouble.empty());

    private Map<Instrument, List<List<Integer>>> given;
    private int[][][] plain;

    @Setup
    public void twelveVisits() {
        Map<String, Instrument> instruments = InstrumentContent.read();
        given = new LinkedHashMap<>();
        for (String key : List.of("odi21a", "nprs_worst", "nprs_average", "nprs_now")) {
            // sets without a gap in the pain ratings, and with the one gap the questionnaire allows
            given.put(instruments.get(key), RandomAnswers.of(instruments.get(key), 200, 1).stream()
                    .filter(answers -> answers.stream().filter(answer -> answer == null).count() <= (answers.size() > 1 ? 1 : 0)).limit(VISITS).toList());
        }
        plain = given.values().stream().map(sets -> sets.stream().map(set -> set.stream().mapToInt(answer -> answer == null ? -1 : answer).toArray())
                .toArray(int[][]::new)).toArray(int[][][]::new);
    }

    @Benchmark
    public List<ChangeReading> scoringAndChange() {
        List<ChangeReading> readings = new ArrayList<>();
        for (Map.Entry<Instrument, List<List<Integer>>> measure : given.entrySet()) {
            Instrument instrument = measure.getKey();
            List<Series.Point> points = new ArrayList<>();
            for (List<Integer> answers : measure.getValue()) {
                points.add(new Series.Point(START.plusWeeks(points.size()), instrument.score(answers).value().getAsDouble(), instrument.version(),
                        instrument.unit(), false));
            }
            readings.add(ChangeReading.of(new Series(instrument, points), "low_back", BESIDE));
        }
        return readings;
    }

    @Benchmark
    public double floor() {
        double kept = 0;
        for (int[][] measure : plain) {
            double[] scores = new double[measure.length];
            for (int i = 0; i < measure.length; i++) {
                int sum = 0;
                int answered = 0;
                for (int answer : measure[i]) {
                    sum += answer < 0 ? 0 : answer;
                    answered += answer < 0 ? 0 : 1;
                }
                scores[i] = measure[i].length == 1 ? sum : 100.0 * sum / (5 * answered);
            }
            double[] slopes = new double[VISITS * (VISITS - 1) / 2];
            int pairs = 0;
            for (int i = 0; i < VISITS; i++) {
                for (int j = i + 1; j < VISITS; j++) {
                    slopes[pairs++] = (scores[j] - scores[i]) / (j - i);
                }
            }
            Arrays.sort(slopes);
            kept += slopes[slopes.length / 2] + scores[VISITS - 1] - scores[0];
        }
        return kept;
    }

    @Test
    void aCaseOfTwelveVisitsStaysUnderTheLimit() throws RunnerException, IOException {
        Map<String, Double> measured = new TreeMap<>();
        // the compiler the product is started with
        var options = new OptionsBuilder().include(ScoringBench.class.getName() + "\\..*").forks(1).warmupIterations(4).measurementIterations(6)
                .warmupTime(TimeValue.seconds(1)).measurementTime(TimeValue.seconds(1)).jvmArgs("-XX:TieredStopAtLevel=1").build();
        for (RunResult result : new Runner(options).run()) {
            measured.put(result.getPrimaryResult().getLabel(), result.getPrimaryResult().getScore());
        }
        double ours = measured.get("scoringAndChange");
        double floor = measured.get("floor");
        BenchmarkPage.put("Scoring and change", """
                A case of twelve visits, each with a back questionnaire of ten items and three pain ratings: 48 forms scored and the change of four
                measures read whole (verdicts, ranges of published amounts, trend, standstill, day for measuring again). The floor is the same
                sums and slopes on plain arrays, without checks, thresholds or words. Average of JMH, one fork, six seconds each, with the
                compiler the product is started with (`-XX:TieredStopAtLevel=1`).

                | | microseconds a case |
                | --- | --- |
                | Scoring and change | %.1f |
                | Floor | %.1f |

                Limit: %.0f microseconds.""".formatted(ours, floor, LIMIT_MICROSECONDS));
        assertTrue(ours < LIMIT_MICROSECONDS, ours + " microseconds");
    }
}
