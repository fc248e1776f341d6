package org.steadwork.workplace;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** The plans of the desks that were assessed. */
@ApplicationScoped
class DeskPlans implements PanacheRepository<DeskPlan> {

    Optional<DeskPlan> of(WorkplaceAssessment assessment) {
        return find("from DeskPlan p left join fetch p.readings where p.assessment.id = ?1", assessment.id()).singleResultOptional();
    }
}
