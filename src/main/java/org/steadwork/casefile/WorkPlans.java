package org.steadwork.casefile;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;

/** The graded return-to-work plans of the cases. */
@ApplicationScoped
public class WorkPlans implements PanacheRepository<WorkPlan> {

    private static final String LATEST = " and p.number = (select max(o.number) from WorkPlan o where o.caseFile = p.caseFile)";

    /** All plans of a case with their steps, the newest first. */
    public List<WorkPlan> of(long caseId) {
        return list("select distinct p from WorkPlan p left join fetch p.steps where p.caseFile.id = ?1 order by p.number desc", caseId);
    }

    /** The plan that holds now: the newest one, unless it was ended. */
    public Optional<WorkPlan> current(long caseId) {
        return list("select distinct p from WorkPlan p left join fetch p.steps where p.caseFile.id = ?1 and p.endedOn is null" + LATEST, caseId)
                .stream().findFirst();
    }

    /** The plans that hold now in the open cases of a scope, with case, patient and steps. */
    List<WorkPlan> running(CaseScope scope) {
        return scope.bind(getEntityManager().createQuery("select distinct p from WorkPlan p join fetch p.caseFile c join fetch c.patient left join fetch p.steps"
                + " where " + scope.open("c", "p.caseFile") + " and p.endedOn is null" + LATEST, WorkPlan.class)).getResultList();
    }
}
