package org.steadwork.exercise;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What patients report of their exercises. */
@ApplicationScoped
public class AdherenceEntries implements PanacheRepository<AdherenceEntry> {

    /** Everything reported in a case by prescription, the earliest first; one query. */
    public Map<Long, List<AdherenceEntry>> ofCase(long caseId) {
        return list("from AdherenceEntry e join fetch e.prescription p where p.caseFile.id = ?1 order by e.weekTo", caseId).stream()
                .collect(Collectors.groupingBy(e -> e.prescription().id()));
    }

    Optional<AdherenceEntry> on(Prescription prescription, LocalDate day) {
        return find("prescription = ?1 and weekTo = ?2", prescription, day).firstResultOptional();
    }
}
