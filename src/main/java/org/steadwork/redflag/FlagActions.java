package org.steadwork.redflag;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;

/** The recorded calls about red flags. */
@ApplicationScoped
public class FlagActions implements PanacheRepository<FlagAction> {

    /** The calls of a case, the newest first. */
    List<FlagAction> of(long caseId) {
        return list("from FlagAction a join fetch a.recordedBy where a.caseFile.id = ?1 order by a.calledAt desc, a.id desc", caseId);
    }

    /** When the latest call was recorded, or null. */
    Instant latestRecorded(long caseId) {
        return getEntityManager().createQuery("select max(a.recordedAt) from FlagAction a where a.caseFile.id = ?1", Instant.class)
                .setParameter(1, caseId).getSingleResult();
    }

    /** When somebody who was called last took the patient over, or null. */
    Instant latestAccepted(long caseId) {
        return getEntityManager().createQuery("select max(a.recordedAt) from FlagAction a where a.caseFile.id = ?1 and a.accepted", Instant.class)
                .setParameter(1, caseId).getSingleResult();
    }
}
