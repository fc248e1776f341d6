package org.steadwork.casefile;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** The links of the cases. */
@ApplicationScoped
public class Links implements PanacheRepository<Link> {

    /** All links of a case with who decided them, the latest decision first, in one query. */
    public List<Link> of(long caseId) {
        return list("from Link l join fetch l.decidedBy where l.caseFile.id = ?1 order by l.decidedAt desc, l.id desc", caseId);
    }

    /** As {@link #of}, once nobody else is changing one; later callers wait for this transaction. */
    public List<Link> ofForChange(long caseId) {
        // the case is locked, not a link, so that two first decisions about a pair cannot pass each other
        getEntityManager().createNativeQuery("select id from case_file where id = ?1 for update").setParameter(1, caseId).getSingleResult();
        return of(caseId);
    }
}
