package org.steadwork.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steadwork.content.Content;
import org.steadwork.exposure.method.CompositeLifting;
import org.steadwork.exposure.method.CompositeVectors;
import org.steadwork.exposure.method.Coupling;
import org.steadwork.exposure.method.Lift;
import org.steadwork.exposure.method.LiftingDuration;
import org.steadwork.exposure.method.LiftingEquation;
import org.steadwork.exposure.method.PrintedLifting;
import org.steadwork.exposure.method.Reba;
import org.steadwork.exposure.method.RevisedStrainIndexVectors;
import org.steadwork.exposure.method.Rosa;
import org.steadwork.exposure.method.Rula;
import org.steadwork.exposure.method.ScreenDay;
import org.steadwork.exposure.method.StaticPosture;
import org.steadwork.exposure.method.Step;
import org.steadwork.exposure.method.StrainIndexVectors;

/** Every vector of the methods' file, read as it stands; its rows name where each comes from. */
class PublishedVectorsTest {

    private static final LiftingEquation LIFTING = ExposureContent.lifting();
    private static final PrintedLifting PRINTED = ExposureContent.printedLifting();
    private static final Rula RULA = ExposureContent.rula();
    private static final Reba REBA = ExposureContent.reba();
    private static final Rosa ROSA = ExposureContent.rosa();

    static List<Vector> vectors() throws IOException {
        try (var reader = new InputStreamReader(PublishedVectorsTest.class.getResourceAsStream("test-vectors.csv"), StandardCharsets.UTF_8)) {
            return Content.csv("test-vectors.csv", reader).stream().map(Vector::of).toList();
        }
    }

    @Test
    void theFileHoldsSixtyOneVectorsOfTenKinds() throws IOException {
        Map<String, Long> counts = vectors().stream().collect(Collectors.groupingBy(Vector::method, TreeMap::new, Collectors.counting()));
        assertEquals(61, counts.values().stream().mapToLong(Long::longValue).sum());
        assertEquals(10, counts.size(), counts.toString());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("vectors")
    void holds(Vector v) {
        switch (v.method()) {
            case "niosh_us_printed" -> printedLifting(v);
            case "niosh_metric_formula" -> lifting(v);
            case "niosh_cli" -> composite(v);
            case "rula" -> rula(v);
            case "reba" -> reba(v);
            case "rosa" -> rosa(v);
            case "strain_index" -> StrainIndexVectors.check(factors(v, "IM", "DM", "EM", "PM", "SM", "HM"), v.expects("SI"));
            case "revised_strain_index" -> RevisedStrainIndexVectors.check(factors(v, "I", "E", "D", "P", "H"), v.expects("RSI"));
            case "iso_11226" -> posture(v);
            case "breaks" -> breaks(v);
            default -> throw new AssertionError("No check for " + v.method());
        }
    }

    private static void printedLifting(Vector v) {
        double limit = PRINTED.limitPounds(v.in("H"), v.in("V"), v.in("D"), v.in("A"), v.in("F"), duration(v), coupling(v.inputs().get("coupling")));
        assertEquals(v.expects("RWL"), limit, v.tolerance("RWL"));
        assertEquals(v.expects("LI"), PrintedLifting.index(v.in("L"), limit), v.tolerance("LI"));
    }

    private static void lifting(Vector v) {
        Lift lift = new Lift(v.in("H"), v.in("V"), v.in("D"), v.in("A"), v.in("F"), duration(v), coupling(v.inputs().get("coupling")));
        LiftingEquation.Result result = LIFTING.of(lift, v.in("L"));
        assertEquals(v.expects("RWL"), result.limitKg(), v.tolerance("RWL"));
        if (v.expected().get("LI").equals("undefined")) {
            assertTrue(result.index().isEmpty());
        } else {
            assertEquals(v.expects("LI"), result.index().getAsDouble(), v.tolerance("LI"));
        }
    }

    private static void composite(Vector v) {
        if (v.inputs().containsKey("FIRWL")) {
            double index = CompositeVectors.index(ExposureContent.frequencies(), v.list("FIRWL"), v.list("L"), v.list("F"), duration(v));
            assertEquals(v.expects("CLI"), index, v.tolerance("CLI"));
            return;
        }
        // the tasks of this vector are written as "T1 L=12 H=30 … fair F=1|T2 …", so its first pair is cut at the first sign
        var first = v.inputs().entrySet().iterator().next();
        List<CompositeLifting.Task> tasks = new ArrayList<>();
        for (String task : (first.getKey() + "=" + first.getValue()).split("\\|")) {
            Map<String, String> words = Arrays.stream(task.strip().split(" "))
                    .collect(Collectors.toMap(w -> w.split("=")[0], w -> w.contains("=") ? w.split("=")[1] : w));
            Coupling grip = Arrays.stream(Coupling.values()).filter(c -> words.containsKey(c.name().toLowerCase(Locale.ROOT))).findFirst().orElseThrow();
            double load = of(words, "L");
            Lift lift = new Lift(of(words, "H"), of(words, "V"), of(words, "D"), of(words, "A"), of(words, "F"), duration(v), grip);
            tasks.add(new CompositeLifting.Task(lift, load, load));
        }
        assertEquals(3, tasks.size());
        assertEquals(v.expects("CLI"), CompositeLifting.of(LIFTING, tasks, duration(v)).index().getAsDouble(), v.tolerance("CLI"));
    }

    private static void rula(Vector v) {
        Rula.Result result = RULA.of(new Rula.Posture(v.whole("UA"), v.whole("LA"), v.whole("W"), v.whole("WT"), v.whole("mA+fA"), v.whole("N"),
                v.whole("T"), v.whole("L"), v.whole("mB+fB")));
        assertEquals(List.of(v.expects("A"), v.expects("C"), v.expects("B"), v.expects("D"), v.expects("grand")),
                result.working().stream().map(Step::value).toList());
    }

    private static void reba(Vector v) {
        Reba.Result result = REBA.of(new Reba.Posture(v.whole("T"), v.whole("N"), v.whole("L"), v.whole("load"), v.whole("UA"), v.whole("LA"),
                v.whole("W"), v.whole("coupling"), v.whole("activity")));
        assertEquals(List.of(v.expects("scoreA"), v.expects("scoreB"), v.expects("C"), v.expects("REBA")),
                result.working().stream().map(Step::value).toList());
    }

    private static void rosa(Vector v) {
        Rosa.Result result = ROSA.of(new Rosa.Station(v.whole("height"), v.whole("depth"), v.whole("arm"), v.whole("back"), v.whole("chairDur"),
                v.whole("monitor"), v.whole("phone"), v.whole("mouse"), v.whole("keyboard")));
        assertEquals(v.expects("chair"), result.chair());
        assertEquals(v.expects("peripherals"), result.peripherals());
        assertEquals(v.expects("final"), result.score());
    }

    private static void posture(Vector v) {
        boolean supported = "full".equals(v.inputs().get("support"));
        StaticPosture.Result result;
        if (v.inputs().containsKey("head") && v.inputs().containsKey("trunk")) {
            assertEquals(v.expects("neck"), v.in("head") - v.in("trunk"));
            result = StaticPosture.neck(v.in("head"), v.in("trunk"), false);
        } else if (v.inputs().containsKey("head")) {
            result = StaticPosture.head(v.in("head"), supported, false);
        } else if (v.inputs().containsKey("trunk")) {
            result = StaticPosture.trunk(v.in("trunk"), supported, false);
        } else {
            result = StaticPosture.upperArm(v.in("upper_arm"), supported, false);
        }
        if (v.expected().containsKey("minutes")) {
            assertEquals(v.expects("minutes"), result.minutes().getAsDouble(), 1e-9);
        } else {
            assertTrue(v.expectsWord(result.verdict().name().toLowerCase(Locale.ROOT)), result + " against " + v.expected());
        }
    }

    private static void breaks(Vector v) {
        if (v.inputs().containsKey("rate")) {
            assertEquals(v.expects("F"), LiftingDuration.burstFrequency(v.in("rate"), v.in("minutes")), v.tolerance("F"));
        } else if (v.inputs().containsKey("day")) {
            double[] goals = ScreenDay.standingGoals(v.whole("day"));
            if (v.expected().containsKey("goals")) {
                assertEquals(v.expected().get("goals"), (int) goals[0] + "|" + (int) goals[1]);
            } else {
                assertEquals(v.expects("goal"), goals[0]);
                assertEquals(v.expects("short"), goals[0] - v.in("standing"));
            }
        } else {
            screenRuns(v);
        }
    }

    private static void screenRuns(Vector v) {
        String[] day = v.inputs().keySet().iterator().next().split("-");
        List<ScreenDay.Off> off = Arrays.stream(v.inputs().get("off").split("\\|")).map(o -> o.split("-"))
                .map(o -> new ScreenDay.Off(LocalTime.parse(o[0]), LocalTime.parse(o[1]))).toList();
        ScreenDay.Result result = ScreenDay.of(LocalTime.parse(day[0]), LocalTime.parse(day[1]), off);
        assertEquals(v.expected().get("runs"), result.runs().stream().map(String::valueOf).collect(Collectors.joining("|")));
        assertEquals(v.expects("total"), result.total());
        assertEquals(v.expects("longest"), result.longest());
        String band = switch (result.band()) {
            case IN_RANGE -> "green";
            case NEAR_THE_EDGE -> "amber";
            case OUT_OF_RANGE -> "red";
        };
        assertTrue(v.expectsWord(band), band + " against " + v.expected());
    }

    private static LiftingDuration duration(Vector v) {
        return LiftingDuration.valueOf(v.inputs().get("class").toUpperCase(Locale.ROOT));
    }

    private static Coupling coupling(String word) {
        return Coupling.valueOf(word.toUpperCase(Locale.ROOT));
    }

    private static double of(Map<String, String> words, String key) {
        return Double.parseDouble(words.get(key));
    }

    private static double[] factors(Vector v, String... keys) {
        return Arrays.stream(keys).mapToDouble(v::in).toArray();
    }
}
