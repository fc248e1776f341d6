package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashSet;
import java.util.Set;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.SymptomReports;

/** The regions that the symptom reports of a case name and that have questions of their own. */
@ApplicationScoped
class ReportedRegions {

    @Inject
    SymptomReports reports;

    @Inject
    RedFlagContent content;

    Set<String> of(long caseId) {
        Set<String> regions = new LinkedHashSet<>();
        reports.regionsReported(caseId).stream().map(BodyRegion::key).filter(content.catalogue().regions()::contains).forEach(regions::add);
        return regions;
    }
}
