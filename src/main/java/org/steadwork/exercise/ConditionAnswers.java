package org.steadwork.exercise;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** What is known of the conditions that may bar exercises. */
@ApplicationScoped
public class ConditionAnswers implements PanacheRepository<ConditionAnswer> {

    public List<ConditionAnswer> of(long caseId) {
        return list("caseFile.id = ?1 order by condition", caseId);
    }

    /** The answers of a case, once nobody else is changing them; later callers wait for this transaction. */
    List<ConditionAnswer> ofForChange(long caseId) {
        // the case is locked, so that two first answers to a question cannot pass each other
        getEntityManager().createNativeQuery("select id from case_file where id = ?1 for update").setParameter(1, caseId).getSingleResult();
        return of(caseId);
    }
}
