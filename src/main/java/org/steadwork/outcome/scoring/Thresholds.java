package org.steadwork.outcome.scoring;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The published amounts of change of one way of measuring, and which of them count in a body region at a baseline. */
public record Thresholds(List<Threshold> all) {

    public Thresholds {
        all = List.copyOf(all);
    }

    /** Returns the amount the verdict uses: by baseline where published so, else the region's own, else the general one. */
    public Optional<Threshold> leading(Threshold.Kind kind, String region, double baseline) {
        Optional<Threshold> byBaseline = nearestBaseline(kind, baseline).filter(Threshold::leads);
        if (byBaseline.isPresent()) {
            return byBaseline;
        }
        List<Threshold> leads = range(kind, region, baseline).stream().filter(Threshold::leads).toList();
        return leads.stream().filter(threshold -> threshold.regions().contains(region)).findFirst()
                .or(() -> leads.stream().filter(Threshold::forAnyRegion).findFirst());
    }

    /** Returns every amount of a kind that applies in a region, smallest first: what the literature ranges over. */
    public List<Threshold> range(Threshold.Kind kind, String region, double baseline) {
        return all.stream().filter(threshold -> threshold.kind() == kind)
                .filter(threshold -> threshold.forAnyRegion() || threshold.regions().contains(region))
                .filter(threshold -> !threshold.dependsOnBaseline() || threshold.equals(nearestBaseline(kind, baseline).orElse(null)))
                .filter(threshold -> threshold.points(baseline) > 0)
                .sorted(Comparator.comparingDouble(threshold -> threshold.points(baseline))).toList();
    }

    // Published baseline bands overlap: the band whose middle is nearest counts, at a tie the larger amount.
    private Optional<Threshold> nearestBaseline(Threshold.Kind kind, double baseline) {
        return all.stream().filter(threshold -> threshold.kind() == kind && threshold.dependsOnBaseline())
                .min(Comparator.comparingDouble((Threshold threshold) -> Math.abs(threshold.middleOfBaseline() - baseline))
                        .thenComparingDouble(threshold -> -threshold.value()));
    }
}
