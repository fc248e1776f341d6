package org.steadwork.casemap.ranking;

import java.util.Set;

import org.steadwork.body.BodyRegion;

/**
 * Something about the work place that is out of its band.
 *
 * @param ref       a reference of the caller's
 * @param regions   the regions such a finding is associated with
 * @param deviation how far out, as a multiple of the width that is only a little off; more than 0
 * @param hoursADay exposed hours a day in [0, 24]; null when not recorded, which is not zero
 * @param strength  weight of the evidence for the association, more than 0
 */
public record WorkFinding(String ref, Set<BodyRegion> regions, double deviation, Double hoursADay, double strength) {

    public WorkFinding {
        regions = Set.copyOf(regions);
        if (!(deviation > 0 && strength > 0 && Double.isFinite(deviation) && Double.isFinite(strength))) {
            throw new IllegalArgumentException("Deviation and strength are more than 0, but were " + deviation + " and " + strength);
        }
        if (hoursADay != null && !(hoursADay >= 0 && hoursADay <= 24)) {
            throw new IllegalArgumentException("Hours a day lie in [0, 24], but were " + hoursADay);
        }
    }

    /** Deviation times strength, which orders findings whose hours nobody recorded. */
    double withoutHours() {
        return deviation * strength;
    }
}
