package org.steadwork.caseload.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * How two groups' times to an event differ as a whole. Clinic groups were not drawn by lot: a description, for comparisons planned
 * beforehand.
 *
 * @param rows one for each time with an event in either group, rising
 * Source: Mantel 1966 (from memory); variance of the hypergeometric distribution, as R's {@code survdiff} with rho = 0.
 */
public record LogRank(List<Row> rows) {

    /**
     * What happened at one time.
     *
     * @param time in the unit of the cohorts
     * @param atRiskFirst at risk in the first group just before
     * @param atRiskSecond at risk in the second group just before
     * @param eventsFirst events in the first group
     * @param eventsSecond events in the second group
     */
    public record Row(double time, int atRiskFirst, int atRiskSecond, int eventsFirst, int eventsSecond) {

        /** Returns how many events the first group would have had if both were alike. */
        public double expectedFirst() {
            return (double) events() * atRiskFirst / atRisk();
        }

        /** Returns the variance of the first group's events; 0 when only one person is at risk. */
        public double variance() {
            double n = atRisk();
            return n == 1 ? 0 : atRiskFirst * (double) atRiskSecond * events() * (n - events()) / (n * n * (n - 1));
        }

        private int events() {
            return eventsFirst + eventsSecond;
        }

        private int atRisk() {
            return atRiskFirst + atRiskSecond;
        }
    }

    public LogRank {
        rows = List.copyOf(rows);
    }

    /** Lays two cohorts beside one another at every time with an event. */
    public static LogRank of(List<Followed> first, List<Followed> second) {
        KaplanMeier one = KaplanMeier.of(first);
        KaplanMeier other = KaplanMeier.of(second);
        List<Row> rows = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < one.steps().size() || j < other.steps().size()) {
            double time = Math.min(timeOf(one, i), timeOf(other, j));
            int eventsFirst = timeOf(one, i) == time ? one.steps().get(i++).events() : 0;
            int eventsSecond = timeOf(other, j) == time ? other.steps().get(j++).events() : 0;
            rows.add(new Row(time, one.atRisk(time), other.atRisk(time), eventsFirst, eventsSecond));
        }
        return new LogRank(rows);
    }

    private static double timeOf(KaplanMeier curve, int step) {
        return step < curve.steps().size() ? curve.steps().get(step).time() : Double.POSITIVE_INFINITY;
    }

    /** Returns the events of the first group. */
    public int observedFirst() {
        return rows.stream().mapToInt(Row::eventsFirst).sum();
    }

    /** Returns the events of the second group. */
    public int observedSecond() {
        return rows.stream().mapToInt(Row::eventsSecond).sum();
    }

    /** Returns the events to be expected in the first group if both were alike. */
    public double expectedFirst() {
        return rows.stream().mapToDouble(Row::expectedFirst).sum();
    }

    /** Returns the events to be expected in the second group if both were alike. */
    public double expectedSecond() {
        return observedFirst() + observedSecond() - expectedFirst();
    }

    /** Returns the variance of observed less expected events of the first group. */
    public double variance() {
        return rows.stream().mapToDouble(Row::variance).sum();
    }

    /** Returns chi-square with one degree of freedom, 0 or more; NaN when the two groups were never at risk together. */
    public double chiSquare() {
        double apart = observedFirst() - expectedFirst();
        double variance = variance();
        return variance == 0 ? Double.NaN : apart * apart / variance;
    }

    /** Returns the p value, in [0, 1]; NaN where chi-square is. */
    public double p() {
        double chiSquare = chiSquare();
        return Double.isNaN(chiSquare) ? Double.NaN : Confidence.upperTailOfChiSquare(chiSquare);
    }
}
