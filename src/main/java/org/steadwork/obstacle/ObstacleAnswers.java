package org.steadwork.obstacle;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.steadwork.casefile.CaseScope;
import org.steadwork.web.ReadOnce;

/** The answers on psychosocial and work flags. For clinicians only: no letter to an employer may ask here. */
@ApplicationScoped
public class ObstacleAnswers implements PanacheRepository<ObstacleAnswer> {

    /** All answers of a case. */
    @ReadOnce
    public List<ObstacleAnswer> of(long caseId) {
        return list("caseFile.id = ?1 order by id", caseId);
    }

    /** One flag where it is present in the open cases of a scope. */
    public List<ObstacleAnswer> present(String obstacle, CaseScope scope) {
        return scope.bind(getEntityManager().createQuery("from ObstacleAnswer a join fetch a.caseFile c where " + scope.open("c", "a.caseFile")
                + " and a.obstacle = :obstacle and a.answer = org.steadwork.kernel.Answer.YES order by a.id", ObstacleAnswer.class)).setParameter("obstacle", obstacle).getResultList();
    }

    /** The flags that are present in any open case, for whoever lists cases. */
    public List<ObstacleAnswer> presentInOpenCases() {
        return list("from ObstacleAnswer a join fetch a.caseFile c where c.closedOn is null and a.answer = ?1 order by a.id",
                org.steadwork.kernel.Answer.YES);
    }
}
