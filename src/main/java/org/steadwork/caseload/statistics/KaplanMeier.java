package org.steadwork.caseload.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The share of a cohort still without an event as time goes on, when not everyone was followed to the end. An event and an end of
 * following on the same day: the event counts as first. Where another event rules the awaited one out (leaving the work force before
 * return) and is common, the curve is not a probability.
 *
 * <p>Source: Kaplan and Meier 1958, J Am Stat Assoc 53:457; standard error of Greenwood 1926; limits of the median as Brookmeyer and
 * Crowley 1982, Biometrics 38:29.
 */
public final class KaplanMeier {

    // a product of fractions that is 1/2 comes out a few 1e-16 beside it
    private static final double ROUNDING = 1e-10;

    private final double[] times;
    private final List<CurveStep> steps;

    private KaplanMeier(double[] times, List<CurveStep> steps) {
        this.times = times;
        this.steps = List.copyOf(steps);
    }

    /** Estimates the curve of a cohort of any size; an empty one has no steps. */
    public static KaplanMeier of(List<Followed> cohort) {
        List<Followed> inOrder = cohort.stream().sorted(Comparator.comparingDouble(Followed::time)).toList();
        int n = inOrder.size();
        List<CurveStep> steps = new ArrayList<>();
        double survival = 1;
        double sum = 0;
        for (int first = 0; first < n;) {
            double time = inOrder.get(first).time();
            int events = 0;
            int next = first;
            for (; next < n && inOrder.get(next).time() == time; next++) {
                events += inOrder.get(next).happened() ? 1 : 0;
            }
            int atRisk = n - first;
            if (events > 0) {
                survival *= (double) (atRisk - events) / atRisk;
                sum += events / ((double) atRisk * (atRisk - events));
                steps.add(new CurveStep(time, atRisk, events, survival, sum));
            }
            first = next;
        }
        return new KaplanMeier(inOrder.stream().mapToDouble(Followed::time).toArray(), steps);
    }

    /** Returns how many started. */
    public int started() {
        return times.length;
    }

    /** Returns how many events there were in all. */
    public int events() {
        return steps.stream().mapToInt(CurveStep::events).sum();
    }

    /** Returns every time with an event, rising. */
    public List<CurveStep> steps() {
        return steps;
    }

    /**
     * Returns the steps that may be shown: none of a small cohort, and none where too few are left to tell them apart.
     *
     * @param fewestStarted with fewer at the start no curve is shown; 10 is our rule, a proposal without a published source
     * @param fewestAtRisk the curve is cut where fewer are at risk; 5 by the same rule
     */
    public List<CurveStep> stepsToShow(int fewestStarted, int fewestAtRisk) {
        return started() < fewestStarted ? List.of() : steps.stream().takeWhile(step -> step.atRisk() >= fewestAtRisk).toList();
    }

    /** Returns S at a time, in [0, 1]: 1 before the first event, the last value after the last one. */
    public double survivalAt(double time) {
        double survival = 1;
        for (CurveStep step : steps) {
            if (step.time() > time) {
                break;
            }
            survival = step.survival();
        }
        return survival;
    }

    /** Returns how many were still followed just before a time: the numbers under a curve. */
    public int atRisk(double time) {
        int first = Arrays.binarySearch(times, time);
        if (first < 0) {
            return times.length - (-first - 1);
        }
        while (first > 0 && times[first - 1] == time) {
            first--;
        }
        return times.length - first;
    }

    /**
     * Returns the median: the first time at which S is 0.5 or less; empty when it is not reached. R takes the middle of a stretch at
     * exactly 0.5 instead.
     */
    public OptionalDouble median() {
        return firstAtHalf(CurveStep::survival);
    }

    /** Returns the lower limit of the median: where the lower limit of S first is 0.5 or less; empty when it never is. */
    public OptionalDouble medianLow(CurveLimits scale, double confidence) {
        return firstAtHalf(step -> step.limits(scale, confidence).map(Limits::low).orElse(1.0));
    }

    /** Returns the upper limit of the median: where the upper limit of S first is 0.5 or less; empty when it is not reached. */
    public OptionalDouble medianHigh(CurveLimits scale, double confidence) {
        return firstAtHalf(step -> step.limits(scale, confidence).map(Limits::high).orElse(1.0));
    }

    private OptionalDouble firstAtHalf(ToDoubleFunction<CurveStep> height) {
        return steps.stream().filter(step -> height.applyAsDouble(step) <= 0.5 + ROUNDING).mapToDouble(CurveStep::time).findFirst();
    }
}
