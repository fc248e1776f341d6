package org.steadwork.exercise;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** The working days that were described, one for a case. */
@ApplicationScoped
public class DayPlans implements PanacheRepository<DayPlan> {

    public Optional<DayPlan> ofCase(long caseFileId) {
        return find("caseFile.id", caseFileId).firstResultOptional();
    }
}
