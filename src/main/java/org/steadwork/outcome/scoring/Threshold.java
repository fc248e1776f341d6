package org.steadwork.outcome.scoring;

import java.util.List;

/**
 * One published amount of change: more than measurement error, or enough to matter, for one population.
 *
 * @param kind error or importance
 * @param value the amount, above 0
 * @param unit points of the scale, or percent of the baseline score
 * @param level how it was made: for error MDC90, MDC95 or as published; for importance MCID, MIC or MID
 * @param regions keys of the body regions it was found in; empty for any region
 * @param population who, how many
 * @param anchor against what importance was judged, blank when not known
 * @param followUp over what time, blank when not known
 * @param leads whether it is the one used for the verdict in its regions; the others are shown beside it
 * @param baselineFrom lowest baseline it is meant for, or minus infinity
 * @param baselineTo highest baseline it is meant for, or infinity
 * @param source the publication
 * @param tag how sure the figure is: S seen in the source, M from memory, C computed from a published one,
 *        P a rule of ours
 */
public record Threshold(Kind kind, double value, Unit unit, String level, List<String> regions, String population, String anchor,
        String followUp, boolean leads, double baselineFrom, double baselineTo, String source, String tag) {

    /** What a threshold answers. */
    public enum Kind { ERROR, IMPORTANCE }

    /** What a threshold counts in. */
    public enum Unit { POINTS, PERCENT_OF_BASELINE }

    public Threshold {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("A threshold must be above 0, but is " + value);
        }
        regions = List.copyOf(regions);
    }

    /** Returns the amount in points from a baseline; a percentage of a baseline of 0 gives 0 and cannot be used. */
    public double points(double baseline) {
        return unit == Unit.POINTS ? value : Math.abs(baseline) * value / 100;
    }

    /** True for a figure that was not seen in its source: shown as such, and never the only ground of an alert. */
    public boolean fromMemory() {
        return tag.equals("M");
    }

    /** Returns the same amount as the one that counts. */
    Threshold leading() {
        return new Threshold(kind, value, unit, level, regions, population, anchor, followUp, true, baselineFrom, baselineTo, source, tag);
    }

    boolean forAnyRegion() {
        return regions.isEmpty();
    }

    boolean dependsOnBaseline() {
        return Double.isFinite(baselineFrom) && Double.isFinite(baselineTo);
    }

    double middleOfBaseline() {
        return (baselineFrom + baselineTo) / 2;
    }
}
