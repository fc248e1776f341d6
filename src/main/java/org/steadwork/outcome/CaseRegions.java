package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.steadwork.body.BodyChart;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.SymptomReport;

/** The body regions of a case, by which its measures and their thresholds are chosen. */
@ApplicationScoped
public class CaseRegions {

    @Inject
    BodyChart chart;

    /**
     * Returns the keys of the regions, those of the first report first and the one that hurt most in it before all; empty when
     * nothing is reported. The first report leads, so that the threshold of a course does not change under way.
     *
     * @param reports of one case, the latest first
     */
    public List<String> of(List<SymptomReport> reports) {
        Set<String> regions = new LinkedHashSet<>();
        for (int i = reports.size() - 1; i >= 0; i--) {
            ReportedPain.regions(reports.get(i), chart).stream().map(BodyRegion::key).forEach(regions::add);
        }
        return List.copyOf(regions);
    }
}
