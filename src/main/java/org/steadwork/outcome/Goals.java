package org.steadwork.outcome;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** The goals of the cases. */
@ApplicationScoped
public class Goals implements PanacheRepository<Goal> {

    /** The goals of a case in the order in which they were set. */
    public List<Goal> of(long caseId) {
        return list("caseFile.id = ?1 order by setOn, id", caseId);
    }
}
