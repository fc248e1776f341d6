package org.steadwork.ownpage;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.steadwork.casefile.CaseScope;

/** What patients reported before visits. */
@ApplicationScoped
public class OwnReports implements PanacheRepository<OwnReport> {

    /** The reports of a case with their lines and answers, the latest first, in two queries. */
    List<OwnReport> ofCase(long caseId) {
        list("select distinct r from OwnReport r left join fetch r.answers where r.caseFile.id = ?1", caseId);
        return list("select distinct r from OwnReport r left join fetch r.lines where r.caseFile.id = ?1 order by r.receivedAt desc, r.id desc", caseId);
    }

    /** Reports of open cases that nobody looked at, the earliest first. */
    List<OwnReport> waiting(CaseScope scope) {
        return scope.bind(getEntityManager().createQuery("from OwnReport r join fetch r.caseFile c join fetch c.patient where r.reviewedAt is null and "
                + scope.open("c", "r.caseFile") + " order by r.receivedAt", OwnReport.class)).getResultList();
    }

    long waiting(long caseId) {
        return count("caseFile.id = ?1 and reviewedAt is null", caseId);
    }
}
