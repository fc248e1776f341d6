package org.steadwork.exposure;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.util.List;
import java.util.Optional;

/** The exposure results kept with the cases. */
@ApplicationScoped
@Named("exposures")
public class ExposureRecords implements PanacheRepository<ExposureRecord> {

    private static final int MOST = 200;

    /** All of a case, by method, then by task, the latest day first; those corrected and withdrawn among them. */
    public List<ExposureRecord> of(long caseId) {
        return find("from ExposureRecord r left join fetch r.corrects where r.caseFile.id = ?1 order by r.title, r.task, r.assessedOn desc, r.id desc", caseId)
                .page(0, MOST).list();
    }

    /** Those that stand, the latest first, at most so many. */
    public List<ExposureRecord> standing(long caseId, int most) {
        return find("caseFile.id = ?1 and correctedAt is null and withdrawnAt is null order by assessedOn desc, id desc", caseId).page(0, most).list();
    }

    public Optional<ExposureRecord> find(long caseId, long id) {
        return find("from ExposureRecord r left join fetch r.corrects where r.caseFile.id = ?1 and r.id = ?2", caseId, id).firstResultOptional();
    }

    /** The record that stands in the place of a corrected one. */
    public Optional<ExposureRecord> correcting(ExposureRecord earlier) {
        return find("corrects", earlier).firstResultOptional();
    }
}
