package org.steadwork.casemap.ranking;

import java.util.Set;

import org.steadwork.body.BodyRegion;

/** Something that hurts: a reference of the caller's and the regions it lies in. */
public record Complaint(String ref, Set<BodyRegion> regions) {

    public Complaint {
        regions = Set.copyOf(regions);
    }
}
