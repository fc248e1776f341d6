package org.steadwork.caseload.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Our curves and log-rank tests beside those of R's survival package on cohorts that R generated. Forty cohorts are kept and checked on
 * every run; with {@code -Dsteadwork.checks=FOLDER} also all those that {@code docs/checks/survival.R} wrote there.
 */
class SurvivalInRTest {

    private static final Path KEPT = Path.of("docs/checks/survival-r.csv");
    // R's twelve printed digits, and rounding in products over a thousand steps
    private static final double TOLERANCE = 1e-9;
    private static final double CONFIDENCE = Limits.USUAL_CONFIDENCE;

    private double largest;

    @Test
    void ourCurvesAndTestsAreThoseOfR() throws IOException {
        assertEquals(40, compare(KEPT));
    }

    @Test
    @EnabledIfSystemProperty(named = "steadwork.checks", matches = ".+")
    void allOfRsCohortsAgree() throws IOException {
        int cohorts = compare(Path.of(System.getProperty("steadwork.checks"), "survival-all-r.csv"));
        System.out.printf("%d cohorts compared, all agree; largest relative difference %.1e%n", cohorts, largest);
        assertTrue(cohorts >= 1000, () -> cohorts + " cohorts");
    }

    private int compare(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        String[] names = lines.get(1).split(",");
        for (String line : lines.subList(2, lines.size())) {
            String[] cells = line.split(",");
            Map<String, double[]> row = new TreeMap<>();
            for (int i = 0; i < names.length; i++) {
                row.put(names[i], Arrays.stream(cells[i].split(" ")).mapToDouble(SurvivalInRTest::number).toArray());
            }
            compare(row);
        }
        return lines.size() - 2;
    }

    private void compare(Map<String, double[]> row) {
        double[] times = row.get("times");
        List<Followed> all = new ArrayList<>();
        List<List<Followed>> groups = List.of(new ArrayList<>(), new ArrayList<>());
        for (int i = 0; i < times.length; i++) {
            Followed one = new Followed(times[i], row.get("events")[i] == 1);
            all.add(one);
            groups.get((int) row.get("groups")[i]).add(one);
        }
        KaplanMeier curve = KaplanMeier.of(all);
        assertSame(row, "step_times", curve, CurveStep::time);
        assertSame(row, "at_risk", curve, CurveStep::atRisk);
        assertSame(row, "at_risk", curve, step -> curve.atRisk(step.time()));
        assertSame(row, "step_events", curve, CurveStep::events);
        assertSame(row, "survival", curve, CurveStep::survival);
        assertSame(row, "standard_error", curve, CurveStep::standardError);
        assertLimits(row, "", curve, CurveLimits.LOG_LOG);
        assertLimits(row, "log_", curve, CurveLimits.LOG);
        assertLimits(row, "plain_", curve, CurveLimits.PLAIN);
        assertSame(row, "median", orNone(curve.median()));
        assertSame(row, "median_low", orNone(curve.medianLow(CurveLimits.LOG_LOG, CONFIDENCE)));
        assertSame(row, "median_high", orNone(curve.medianHigh(CurveLimits.LOG_LOG, CONFIDENCE)));
        LogRank test = LogRank.of(groups.get(0), groups.get(1));
        assertSame(row, "observed", test.observedFirst());
        assertSame(row, "expected", test.expectedFirst());
        assertSame(row, "variance", test.variance());
        assertSame(row, "chi_square", test.chiSquare());
        assertSame(row, "p", test.p());
    }

    private void assertLimits(Map<String, double[]> row, String scale, KaplanMeier curve, CurveLimits limits) {
        assertSame(row, scale + "low", curve, step -> step.limits(limits, CONFIDENCE).map(Limits::low).orElse(Double.NaN));
        assertSame(row, scale + "high", curve, step -> step.limits(limits, CONFIDENCE).map(Limits::high).orElse(Double.NaN));
    }

    private void assertSame(Map<String, double[]> row, String what, KaplanMeier curve, ToDoubleFunction<CurveStep> ours) {
        assertSame(row, what, curve.steps().stream().mapToDouble(ours).toArray());
    }

    private void assertSame(Map<String, double[]> row, String what, double... ours) {
        double[] theirs = row.get(what);
        assertEquals(theirs.length, ours.length, () -> what + " of " + Arrays.toString(row.get("times")));
        for (int i = 0; i < ours.length; i++) {
            double tolerance = TOLERANCE * (Double.isNaN(theirs[i]) ? 1 : Math.max(1, Math.abs(theirs[i])));
            assertEquals(theirs[i], ours[i], tolerance, () -> what + " of " + Arrays.toString(row.get("times")) + Arrays.toString(row.get("events")));
            if (!Double.isNaN(ours[i])) {
                largest = Math.max(largest, Math.abs(theirs[i] - ours[i]) / Math.max(1, Math.abs(theirs[i])));
            }
        }
    }

    private static double orNone(OptionalDouble time) {
        return time.orElse(Double.NaN);
    }

    private static double number(String text) {
        return text.equals("none") ? Double.NaN : Double.parseDouble(text);
    }
}
