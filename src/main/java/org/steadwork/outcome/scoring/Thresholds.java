package org.steadwork.outcome.scoring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The published amounts of change of one way of measuring, and which of them count in a body region at a baseline. */
public record Thresholds(List<Threshold> all) {

    /**
     * The amounts of one kind that count in one region at one baseline.
     *
     * @param range smallest first: what the literature ranges over
     * @param leading the one the verdict uses
     */
    public record Counting(List<Threshold> range, Optional<Threshold> leading) {
        public Counting {
            range = List.copyOf(range);
        }
    }

    public Thresholds {
        all = List.copyOf(all);
    }

    /** Returns the amounts that count; the leading one is that of the baseline where published so, else the region's own, else the general one. */
    public Counting counting(Threshold.Kind kind, String region, double baseline) {
        Threshold nearest = nearestBaseline(kind, baseline);
        List<Threshold> range = new ArrayList<>();
        Threshold own = null;
        Threshold general = null;
        for (Threshold threshold : all) {
            boolean here = threshold.kind() == kind && (threshold.forAnyRegion() || threshold.regions().contains(region))
                    && (!threshold.dependsOnBaseline() || threshold == nearest) && threshold.points(baseline) > 0;
            if (here) {
                range.add(threshold);
                if (threshold.leads() && own == null && threshold.regions().contains(region)) {
                    own = threshold;
                } else if (threshold.leads() && general == null && threshold.forAnyRegion()) {
                    general = threshold;
                }
            }
        }
        range.sort(Comparator.comparingDouble(threshold -> threshold.points(baseline)));
        Threshold leading = nearest != null && nearest.leads() ? nearest : own != null ? own : general;
        return new Counting(range, Optional.ofNullable(leading));
    }

    /** Returns the amount the verdict uses. */
    public Optional<Threshold> leading(Threshold.Kind kind, String region, double baseline) {
        return counting(kind, region, baseline).leading();
    }

    /** Returns every amount of a kind that applies in a region, smallest first. */
    public List<Threshold> range(Threshold.Kind kind, String region, double baseline) {
        return counting(kind, region, baseline).range();
    }

    // Published baseline bands overlap: the band whose middle is nearest counts, at a tie the larger amount.
    private Threshold nearestBaseline(Threshold.Kind kind, double baseline) {
        Threshold nearest = null;
        for (Threshold threshold : all) {
            if (threshold.kind() == kind && threshold.dependsOnBaseline() && (nearest == null || nearer(threshold, nearest, baseline))) {
                nearest = threshold;
            }
        }
        return nearest;
    }

    private static boolean nearer(Threshold one, Threshold other, double baseline) {
        int byDistance = Double.compare(Math.abs(one.middleOfBaseline() - baseline), Math.abs(other.middleOfBaseline() - baseline));
        return byDistance < 0 || byDistance == 0 && one.value() > other.value();
    }
}
