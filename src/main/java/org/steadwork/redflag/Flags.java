package org.steadwork.redflag;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.steadwork.web.ReadOnce;

/** The flags of the cases. */
@ApplicationScoped
public class Flags implements PanacheRepository<Flag> {

    /** All flags of a case, open and closed, the first raised first. */
    @ReadOnce
    public List<Flag> of(long caseId) {
        return list("from Flag f left join fetch f.closedBy left join fetch f.urgencyBy where f.caseFile.id = ?1 order by f.raisedAt, f.id", caseId);
    }

    public Optional<Flag> of(long caseId, long flagId) {
        return find("from Flag f left join fetch f.closedBy left join fetch f.urgencyBy where f.id = ?1 and f.caseFile.id = ?2",
                flagId, caseId).firstResultOptional();
    }
}
