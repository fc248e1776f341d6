package org.steadwork.outcome.scoring;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A way of measuring: its items by number, its scoring rule, its scale and what is known about change on it.
 *
 * @param key name in content and in stored scores, unique
 * @param version of the form; scores of two versions never make one series
 * @param unit written after a value, for example %, or blank for points
 * @param regions keys of the body regions it is meant for; empty for any
 * @param outcome false for a risk screen, on which change means nothing
 * @param cannotImproveBelow baseline under which the scale cannot show improvement; empty when not known
 * @param cannotWorsenAbove baseline above which it cannot show worsening
 * @param everyDays how often it is due, in days; 0 for once at the start of care
 * @param loinc the LOINC code of the score, blank when none is confirmed
 */
public record Instrument(String key, String name, String label, String version, String unit, List<String> regions, List<Item> items,
        ScoringRule rule, Direction direction, double lowest, double highest, boolean outcome, List<Band> bands,
        List<Threshold> thresholds, OptionalDouble cannotImproveBelow, OptionalDouble cannotWorsenAbove, int everyDays,
        String scheduleWords, String permission, String source, String loinc, List<String> notes) {

    public Instrument {
        regions = List.copyOf(regions);
        items = List.copyOf(items);
        bands = List.copyOf(bands);
        thresholds = List.copyOf(thresholds);
        notes = List.copyOf(notes);
    }

    public boolean forRegion(String region) {
        return regions.isEmpty() || regions.contains(region);
    }

    public Scored score(List<Integer> answers) {
        return rule.score(ItemAnswers.of(items, answers));
    }

    /** Returns the band a score falls in, if the instrument has bands. */
    public Optional<Band> band(double score) {
        return bands.stream().filter(band -> score <= band.highest() + ChangeVerdict.ROUNDING).findFirst();
    }

    /** Returns the band that every value between two bounds falls in; empty when they fall in different ones. */
    public Optional<Band> band(double low, double high) {
        return band(low).filter(band -> band(high).filter(band::equals).isPresent());
    }

    /** Returns the error threshold for the verdict in a region: the region's own if there is one, else the general one. */
    public Optional<Threshold> error(String region, double baseline) {
        return amounts().leading(Threshold.Kind.ERROR, region, baseline);
    }

    /** Returns the importance threshold for the verdict in a region at a baseline. */
    public Optional<Threshold> importance(String region, double baseline) {
        return amounts().leading(Threshold.Kind.IMPORTANCE, region, baseline);
    }

    /** Returns every threshold of a kind that applies in a region, smallest first: what the literature ranges over. */
    public List<Threshold> range(Threshold.Kind kind, String region, double baseline) {
        return amounts().range(kind, region, baseline);
    }

    /** Returns the published amounts of change. */
    public Thresholds amounts() {
        return new Thresholds(thresholds);
    }
}
