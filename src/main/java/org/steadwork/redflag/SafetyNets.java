package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What the patient of a case is told to watch for. */
@ApplicationScoped
public class SafetyNets {

    @Inject
    RedFlagContent content;

    @Inject
    RedFlagScreens screens;

    @Inject
    ReportedRegions reported;

    /** The regions reported or ever asked about, in the order of the content; all of them while none was reported. */
    List<String> regions(long caseId) {
        Set<String> regions = new LinkedHashSet<>(reported.of(caseId));
        screens.latest(caseId).ifPresent(screen -> regions.addAll(screen.regions()));
        return content.catalogue().regions().stream().filter(region -> regions.isEmpty() || regions.contains(region)).toList();
    }

    public SafetyNet.Warnings of(long caseId) {
        return content.safetyNet().warnings(regions(caseId));
    }
}
