package org.steadwork.obstacle;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** The answers on psychosocial and work flags. For clinicians only: no letter to an employer may ask here. */
@ApplicationScoped
public class ObstacleAnswers implements PanacheRepository<ObstacleAnswer> {

    /** All answers of a case. */
    public List<ObstacleAnswer> of(long caseId) {
        return list("caseFile.id = ?1 order by id", caseId);
    }

    /** The flags that are present in any open case, for whoever lists cases. */
    public List<ObstacleAnswer> presentInOpenCases() {
        return list("from ObstacleAnswer a join fetch a.caseFile c where c.closedOn is null and a.answer = ?1 order by a.id",
                org.steadwork.kernel.Answer.YES);
    }
}
