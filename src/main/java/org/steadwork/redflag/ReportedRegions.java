package org.steadwork.redflag;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.body.BodyChart;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CaseScope;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.web.Initial;

/** The regions that the symptom reports of a case name and that have questions of their own. */
@ApplicationScoped
class ReportedRegions {

    @Inject
    SymptomReports reports;

    @Inject
    BodyChart chart;

    @Inject
    RedFlagContent content;

    /** Regions reported that a signed screen of the case did not ask about; a screen without regions asked about every one. */
    Set<String> notAskedIn(RedFlagScreen screen) {
        return screen.signed() && !screen.regions().isEmpty() ? notAskedIn(screen, of(screen.caseFile().id())) : Set.of();
    }

    /** The same, of what was reported up to a day. */
    Set<String> notAskedIn(RedFlagScreen screen, LocalDate until) {
        return screen.signed() && !screen.regions().isEmpty()
                ? notAskedIn(screen, known(reports.regionsReported(screen.caseFile().id(), until))) : Set.of();
    }

    static Set<String> notAskedIn(RedFlagScreen screen, Set<String> reported) {
        Set<String> missing = new LinkedHashSet<>(screen.signed() && !screen.regions().isEmpty() ? reported : Set.of());
        missing.removeAll(screen.regions());
        return missing;
    }

    /** The regions reported in each open case of a scope, in one query. */
    Map<Long, Set<String>> ofOpenCases(CaseScope scope) {
        Map<Long, List<String>> zones = new HashMap<>();
        scope.bind(reports.getEntityManager().createQuery("select distinct c.id, s.zone from RegionSymptom s join s.report r join r.caseFile c where "
                + scope.open("c", "r.caseFile"), Object[].class))
                .getResultList().forEach(row -> zones.computeIfAbsent((Long) row[0], id -> new ArrayList<>()).add((String) row[1]));
        Map<Long, Set<String>> regions = new HashMap<>();
        zones.forEach((id, named) -> regions.put(id, known(chart.regionsOf(named))));
        return regions;
    }

    /** Names of regions, joined for people. */
    String words(Set<String> regions) {
        return regions.stream().map(content::region).map(Initial::small).collect(Collectors.joining(", "));
    }

    private Set<String> known(Set<BodyRegion> named) {
        return named.stream().map(BodyRegion::key).filter(content.catalogue().regions()::contains).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    Set<String> of(long caseId) {
        return known(reports.regionsReported(caseId));
    }
}
