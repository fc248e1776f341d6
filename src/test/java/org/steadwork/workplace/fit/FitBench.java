package org.steadwork.workplace.fit;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.steadwork.workplace.TestTargets.CORRELATIONS;
import static org.steadwork.workplace.TestTargets.ESTIMATES;
import static org.steadwork.workplace.TestTargets.POPULATIONS;
import static org.steadwork.workplace.TestTargets.TARGETS;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.steadwork.measure.BenchmarkPage;

/** How long a fit takes, warm and on one core, beside the same arithmetic in a bare loop. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class FitBench {

    private static final int PEOPLE = 100_000;
    private static final ErrorCorrelations TOGETHER = CORRELATIONS.get(BodyGroup.FEMALE).get(false);

    private final Person person = estimated();
    private final Workstation station = Workstation.of(Map.of(Part.SEAT, Travel.of(400, 510), Part.DESK, Travel.fixed(740), Part.SCREEN_TOP,
            Travel.of(350, 470), Part.SEAT_DEPTH, Travel.of(400, 460), Part.ARMREST, Travel.fixed(260)), new Settings(440, 0, 470, 0, 740, 260, 1150, 600), 30, 30);
    private final FitResult fit = FitSolver.solve(person, station, TARGETS);
    private final FitModel model = new FitModel(person, station, TARGETS);
    private final Body[] bodies = BodyDraws.of(model, TOGETHER).draw(Sureness.DRAWS, 1);

    private static Person estimated() {
        Map<BodyMeasure, Measurement> body = new EnumMap<>(BodyMeasure.class);
        for (BodyMeasure measure : Population.MEASURES) {
            BodyEstimate estimate = ESTIMATES.estimate(BodyDimension.of(measure).orElseThrow(), BodyGroup.FEMALE, 1580, OptionalDouble.empty());
            body.put(measure, Measurement.estimated(estimate.value(), estimate.predictionError()));
        }
        return Person.of(body, Lenses.SINGLE_OR_NONE);
    }

    /** With what is there, and every list of up to three pieces of equipment. */
    @Benchmark
    public Object plainFit() {
        return FitSolver.solve(person, station, TARGETS);
    }

    /** As many settings as the fit at most weighs: every seat height, for today's equipment and each list of it, once through the cost. */
    @Benchmark
    public double plainFitBare() {
        double least = Double.POSITIVE_INFINITY;
        for (int list = 0; list < 232; list++) {
            least = Math.min(least, bareScan(bodies[0], 0.001 * list));
        }
        return least;
    }

    @Benchmark
    public Object fitWithDraws() {
        return Sureness.of(person, station, TARGETS, FitSolver.solve(person, station, TARGETS), TOGETHER, Sureness.DRAWS, Sureness.SEED);
    }

    /** Every seat height once through the cost, for each draw, with today's equipment and each recommended piece. */
    @Benchmark
    public double fitWithDrawsBare() {
        double sum = 0;
        int answers = 1 + fit.gains().size() + (fit.shortestList().filter(list -> list.items().size() > 1).isPresent() ? 1 : 0);
        for (Body body : bodies) {
            for (int i = 0; i < answers; i++) {
                sum += bareScan(body, 0.001 * i);
            }
        }
        return sum;
    }

    @Benchmark
    public Object accommodation() {
        return Accommodation.of(POPULATIONS.get("us_army_2012").population(), 0.5, Lenses.SINGLE_OR_NONE, station, TARGETS, PEOPLE, 1);
    }

    /** As many people drawn from independent normal numbers, every seat height once through the cost. */
    @Benchmark
    public double accommodationBare() {
        SplittableRandom random = new SplittableRandom(1);
        double sum = 0;
        for (int n = 0; n < PEOPLE; n++) {
            sum += bareScan(new Body(409 + 24 * random.nextGaussian(), 25, 239 + 27 * random.nextGaussian(), 736 + 32 * random.nextGaussian(),
                    494 + 28 * random.nextGaussian(), 174 + 15 * random.nextGaussian(), 650), 0);
        }
        return sum;
    }

    /** The weighted mm outside the bands of feet, elbow, thigh and eye at each height of the seat, with the numbers written out. */
    private static double bareScan(Body body, double shift) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 110; i++) {
            double height = 400 + i + shift;
            double feet = height - body.popliteal() - body.shoe();
            double elbow = 770 - height - body.elbow();
            double room = 710 - height - body.thigh();
            double wanted = Math.min(470, Math.max(350, height + body.eye() - 20 - 740));
            double eye = height + body.eye() - 740 - wanted;
            double cost = 0.4 * outside(feet, -30, 10) + 0.5 * outside(elbow, -30, 10) + outside(room, 20, 1e9) + 0.4 * outside(eye, 0, 60);
            least = Math.min(least, cost);
        }
        return least;
    }

    private static double outside(double value, double low, double high) {
        return Math.max(0, Math.max(low - value, value - high));
    }

    @Test
    void measure() throws Exception {
        Map<String, Double> micros = new TreeMap<>();
        for (RunResult result : new Runner(new OptionsBuilder().include("\\b" + FitBench.class.getSimpleName() + "\\b").forks(1).threads(1)
                .warmupIterations(3).warmupTime(TimeValue.seconds(1)).measurementIterations(3).measurementTime(TimeValue.seconds(1))
                .jvmArgs("-XX:+UseSerialGC").build()).run()) {
            micros.put(result.getPrimaryResult().getLabel(), result.getPrimaryResult().getStatistics().getPercentile(50));
        }
        BenchmarkPage.put("Fit of a work place", """
                A woman of 1,580 mm, all five measures estimated, at a fixed desk with a chair that is too low, a screen that is too low and
                an armrest that is fixed: %d pieces of equipment help. Warm, one thread (JMH, 1 fork, 3 iterations
                of 1 s, every call timed); the median call is given, as other programs take the processor away from some.

                "Bare loop": for the same number of people, draws or lists of equipment, the same chair's 111 heights, each once through
                the four weighted deviations with the numbers written out, no equipment, no tie between settings broken and nothing
                kept. It goes through every height; the fit leaves those that can only be worse, and may be the faster for it.

                | | time, ms | limit, ms | bare loop, ms | ratio |
                | --- | --- | --- | --- | --- |
                %s%s%s""".formatted(fit.gains().size(), row("One plain fit, equipment and all", micros, "plainFit", 0.5),
                row("One fit with 1,000 draws of the body", micros, "fitWithDraws", 20), row("Accommodation of 100,000 people", micros, "accommodation", 3000)));
        assertTrue(micros.get("plainFit") < 500, micros.toString());
        assertTrue(micros.get("fitWithDraws") < 20_000, micros.toString());
        assertTrue(micros.get("accommodation") < 3_000_000, micros.toString());
    }

    private static String row(String what, Map<String, Double> micros, String name, double limit) {
        double time = micros.get(name) / 1000;
        double bare = micros.get(name + "Bare") / 1000;
        return String.format(Locale.ROOT, "| %s | %.3g | %s | %.3g | %.2g |%n", what, time, limit == Math.rint(limit) ? String.valueOf((int) limit) : String.valueOf(limit),
                bare, time / bare);
    }
}
