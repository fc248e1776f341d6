package org.steadwork.caseload.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.inference.TTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class GroupFiguresTest {

    private static final double FOUR_DIGITS = 0.00005 + 1e-9;
    private static final double[] FIRST = {6, 7, 5, 8, 6, 7, 4, 8};
    private static final double[] LATER = {3, 5, 4, 3, 5, 2, 4, 6};

    /** An example of ours, computed with SciPy 1.17 and R 4.2 (C): pain ratings of eight people. */
    @Test
    void effectSizesAreThoseComputedElsewhere() {
        GroupChange change = GroupChange.of(FIRST, LATER, true);
        assertEquals(2.375, change.meanImprovement(), 1e-12);
        assertEquals(1.4079, change.sdBaseline(), FOUR_DIGITS);
        assertEquals(1.8468, change.sdChange(), FOUR_DIGITS);
        assertEquals(1.687, change.effectSize(), 0.0005);
        assertEquals(1.286, change.standardisedResponseMean(), 0.0005);
        assertEquals(3.637, change.pairedT(), 0.0005);
        assertEquals(0.0083, change.p(), FOUR_DIGITS);
        assertEquals(new TTest().pairedTTest(FIRST, LATER), change.p(), 1e-12);
    }

    @Test
    void anImprovementIsPositiveInEitherDirection() {
        GroupChange lower = GroupChange.of(FIRST, LATER, true);
        GroupChange higher = GroupChange.of(Arrays.stream(FIRST).map(x -> 10 - x).toArray(), Arrays.stream(LATER).map(x -> 10 - x).toArray(), false);
        assertEquals(lower.meanImprovement(), higher.meanImprovement(), 1e-12);
        assertEquals(lower.effectSize(), higher.effectSize(), 1e-12);
        assertEquals(-lower.effectSize(), GroupChange.of(FIRST, LATER, false).effectSize(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> GroupChange.of(new double[] {1}, new double[] {2}, true));
        assertThrows(IllegalArgumentException.class, () -> GroupChange.of(new double[] {1, Double.NaN}, new double[] {2, 3}, true));
    }

    /** The same eight people: 5 of 8 by two points (Wilson 30.6-86.3 %), 3 of 8 by two points and 30 % (C). */
    @Test
    void theDefinitionDecidesTheShareOfResponders() {
        long byPoints = 0;
        long byPercentToo = 0;
        for (int i = 0; i < FIRST.length; i++) {
            double gain = FIRST[i] - LATER[i];
            byPoints += gain >= 2 ? 1 : 0;
            byPercentToo += gain >= 2 && gain / FIRST[i] >= 0.3 ? 1 : 0;
        }
        assertEquals(5, byPoints);
        assertEquals(3, byPercentToo);
        Limits limits = new Proportion((int) byPoints, FIRST.length).wilson(0.95);
        assertEquals(0.306, limits.low(), 0.0005);
        assertEquals(0.863, limits.high(), 0.0005);
    }

    /** The tasting of tea: Fisher 1935, as worked in the help page of R's fisher.test after Agresti. */
    @Test
    void theTeaTastingIsThatPublished() {
        FourfoldTable tea = new FourfoldTable(3, 1, 1, 3);
        assertEquals(17.0 / 70, tea.pOfAtLeast(), 1e-12);
        assertEquals(34.0 / 70, tea.p(), 1e-12);
        assertEquals(6.408, tea.oddsRatio(), 0.0005);
        assertEquals(0.3136, tea.lowerBound(0.95), FOUR_DIGITS);
        assertEquals(9, tea.countedOddsRatio(), 1e-12);
        FourfoldTable perfect = new FourfoldTable(4, 0, 0, 4);
        assertEquals(1.0 / 70, perfect.pOfAtLeast(), 1e-12);
        assertEquals(2.0 / 70, perfect.p(), 1e-12);
        assertEquals(Double.POSITIVE_INFINITY, perfect.oddsRatio());
        assertEquals(Double.POSITIVE_INFINITY, perfect.oddsRatioLimits(0.95).high());
    }

    @ParameterizedTest(name = "{0} {1} {2} {3}")
    @CsvFileSource(files = "docs/checks/exact-r.csv", numLinesToSkip = 2)
    void exactTestsAreThoseOfR(int both, int findingOnly, int complaintOnly, int neither, double p, String oddsRatio, String low, String high) {
        FourfoldTable table = new FourfoldTable(both, findingOnly, complaintOnly, neither);
        assertEquals(p, table.p(), 1e-9);
        assertRatio(oddsRatio, table.oddsRatio());
        assertRatio(low, table.oddsRatioLimits(0.95).low());
        assertRatio(high, table.oddsRatioLimits(0.95).high());
    }

    // R's own root finder stops at a relative precision of about 1e-4 (uniroot, tol = .Machine$double.eps^0.25)
    private static void assertRatio(String theirs, double ours) {
        if (theirs.equals("Inf")) {
            assertEquals(Double.POSITIVE_INFINITY, ours);
        } else {
            double expected = Double.parseDouble(theirs);
            assertEquals(expected, ours, 3e-4 * Math.max(1, expected * expected));
        }
    }

    @Test
    void aTableOrItsMarginsMayDecideNothing() {
        assertTrue(Double.isNaN(new FourfoldTable(5, 0, 3, 0).oddsRatio()));
        assertEquals(1, new FourfoldTable(5, 0, 3, 0).p(), 1e-12);
        assertEquals(new Limits(0, Double.POSITIVE_INFINITY), new FourfoldTable(5, 0, 3, 0).oddsRatioLimits(0.95));
        assertThrows(IllegalArgumentException.class, () -> new FourfoldTable(0, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new FourfoldTable(-1, 2, 2, 2));
    }

    /** R 4.2: p.adjust(c(0.01, 0.04, 0.03, 0.005, 0.55, 0.04), "BH"). */
    @Test
    void manyComparisonsAreAdjustedAsInR() {
        assertArrayEquals(new double[] {0.03, 0.048, 0.048, 0.03, 0.55, 0.048},
                FalseDiscovery.adjusted(new double[] {0.01, 0.04, 0.03, 0.005, 0.55, 0.04}), 1e-12);
        assertArrayEquals(new double[0], FalseDiscovery.adjusted(new double[0]));
        assertThrows(IllegalArgumentException.class, () -> FalseDiscovery.adjusted(new double[] {0.2, Double.NaN}));
    }

    /** The step-up rule itself, counted by hand: the largest k with p(k) at most k q / m. */
    @Test
    void adjustedValuesPickWhatTheStepUpRulePicks() {
        Random random = new Random(3);
        for (int round = 0; round < 500; round++) {
            double[] p = random.doubles(1 + random.nextInt(30)).map(x -> x * x * x).toArray();
            double q = 0.01 + 0.3 * random.nextDouble();
            double[] sorted = p.clone();
            Arrays.sort(sorted);
            int k = p.length;
            while (k > 0 && sorted[k - 1] > k * q / p.length) {
                k--;
            }
            long picked = Arrays.stream(FalseDiscovery.adjusted(p)).filter(x -> x <= q).count();
            assertEquals(k, picked, Arrays.toString(p) + " at " + q);
        }
    }

    @Test
    void theLeukaemiaLogRankIsThatOfTheTextbooks() {
        LogRank test = LogRank.of(Cohorts.group("leukaemia.csv", "6-MP"), Cohorts.group("leukaemia.csv", "placebo"));
        assertEquals(9, test.observedFirst());
        assertEquals(21, test.observedSecond());
        assertEquals(19.2505, test.expectedFirst(), FOUR_DIGITS);
        assertEquals(10.7495, test.expectedSecond(), FOUR_DIGITS);
        assertEquals(6.25696, test.variance(), 0.000005);
        assertEquals(16.7929, test.chiSquare(), FOUR_DIGITS);
        assertEquals(4.17e-5, test.p(), 0.005e-5);
    }

    @ParameterizedTest(name = "week {0}")
    @CsvFileSource(resources = "leukaemia-rows.csv", numLinesToSkip = 2)
    void theRowsOfTheLeukaemiaLogRankAreThosePrinted(double time, int atRiskFirst, int atRiskSecond, int eventsFirst, int eventsSecond,
            double expected, double variance) {
        LogRank test = LogRank.of(Cohorts.group("leukaemia.csv", "6-MP"), Cohorts.group("leukaemia.csv", "placebo"));
        LogRank.Row row = test.rows().stream().filter(r -> r.time() == time).findFirst().orElseThrow();
        assertEquals(new LogRank.Row(time, atRiskFirst, atRiskSecond, eventsFirst, eventsSecond), row);
        assertEquals(expected, row.expectedFirst(), FOUR_DIGITS);
        assertEquals(variance, row.variance(), FOUR_DIGITS);
    }

    /** Miller 1981, data set aml of R's survival (re-run, R 4.2). */
    @Test
    void theMaintenanceLogRankIsThatOfR() {
        LogRank test = LogRank.of(Cohorts.group("aml.csv", "maintained"), Cohorts.group("aml.csv", "not"));
        assertEquals(7, test.observedFirst());
        assertEquals(11, test.observedSecond());
        assertEquals(10.69, test.expectedFirst(), 0.005);
        assertEquals(7.31, test.expectedSecond(), 0.005);
        assertEquals(3.396, test.chiSquare(), 0.0005);
        assertEquals(0.065, test.p(), 0.0005);
    }

    @Test
    void groupsNeverAtRiskTogetherCannotBeCompared() {
        LogRank test = LogRank.of(List.of(new Followed(1, false)), List.of(new Followed(2, true)));
        assertTrue(Double.isNaN(test.chiSquare()) && Double.isNaN(test.p()));
    }
}
