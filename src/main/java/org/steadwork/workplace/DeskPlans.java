package org.steadwork.workplace;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The plans of the desks that were assessed. */
@ApplicationScoped
public class DeskPlans implements PanacheRepository<DeskPlan> {

    /**
     * Stores the plan of an assessment that has none.
     *
     * @param second what the second screen is used for: none, side or equal
     * @param readings in mm or degrees, by key of the content
     * @throws IllegalArgumentException for a key that the content does not have
     */
    public void add(WorkplaceAssessment assessment, String second, Map<String, BigDecimal> readings) {
        Map<PlanItem, BigDecimal> read = new EnumMap<>(PlanItem.class);
        readings.forEach((key, amount) -> read.put(PlanItem.valueOf(key.toUpperCase(Locale.ROOT)), amount));
        DeskPlan plan = new DeskPlan(assessment);
        plan.shows(SecondScreen.valueOf(second.toUpperCase(Locale.ROOT)), null, read);
        persist(plan);
    }

    Optional<DeskPlan> of(WorkplaceAssessment assessment) {
        return find("from DeskPlan p left join fetch p.readings where p.assessment.id = ?1", assessment.id()).singleResultOptional();
    }
}
