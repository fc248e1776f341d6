package org.steadwork.workplace;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steadwork.workplace.fit.AdjustmentStep;
import org.steadwork.workplace.fit.FitResult;
import org.steadwork.workplace.fit.Grade;
import org.steadwork.workplace.fit.Part;

/** The assessments of the cases' work places, each with what was measured, observed and proposed. */
@ApplicationScoped
public class Assessments implements PanacheRepository<WorkplaceAssessment> {

    @Inject
    EntityManager db;

    @Inject
    WorkplaceContent content;

    @Inject
    Findings findings;

    /** Returns the assessments of a case, the latest first; the first one counts. */
    public List<WorkplaceAssessment> of(long caseId) {
        return list("from WorkplaceAssessment a join fetch a.caseFile left join fetch a.desk d left join fetch d.room dr"
                + " left join fetch dr.site left join fetch a.chair c left join fetch c.room cr left join fetch cr.site where a.caseFile.id = ?1 order by a.assessedOn desc, a.id desc", caseId);
    }

    public Optional<WorkplaceAssessment> latest(long caseId) {
        return of(caseId).stream().findFirst();
    }

    /** Returns all assessments of a case, the latest first, with everything recorded for them, in three queries. */
    List<RecordedWorkplace> allRecorded(long caseId) {
        return recorded(of(caseId));
    }

    /** Returns the assessments at a registered desk, the latest first, each with its case, its patient and its chair. */
    List<WorkplaceAssessment> at(long deskId) {
        return list("from WorkplaceAssessment a join fetch a.caseFile c join fetch c.patient left join fetch a.chair where a.desk.id = ?1"
                + " order by a.assessedOn desc, a.id desc", deskId);
    }

    /** Returns which assessments at a desk were followed by one of the same person at another registered desk. */
    List<Long> movedFrom(long deskId) {
        return db.createQuery("select a.id from WorkplaceAssessment a join a.caseFile c where a.desk.id = ?1 and exists (select 1 from WorkplaceAssessment b"
                + " join b.caseFile d where d.patient = c.patient and b.desk.id <> ?1 and (b.assessedOn > a.assessedOn or b.assessedOn = a.assessedOn and b.id > a.id))",
                Long.class).setParameter(1, deskId).getResultList();
    }

    /** Returns everything recorded for some assessments, in their order, in two queries. */
    List<RecordedWorkplace> recorded(List<WorkplaceAssessment> of) {
        List<Long> ids = of.isEmpty() ? List.of(-1L) : of.stream().map(WorkplaceAssessment::id).toList();
        Map<Long, Map<String, Taken>> taken = new HashMap<>();
        db.createQuery("from RecordedMeasurement where assessment.id in ?1 order by id", RecordedMeasurement.class).setParameter(1, ids)
                .getResultList().forEach(m -> taken.computeIfAbsent(m.assessmentId(), id -> new LinkedHashMap<>()).put(m.measure(), m.taken()));
        Map<Long, Map<String, Grade>> grades = new HashMap<>();
        db.createQuery("from RecordedObservation where assessment.id in ?1 order by id", RecordedObservation.class).setParameter(1, ids)
                .getResultList().forEach(o -> grades.computeIfAbsent(o.assessmentId(), id -> new LinkedHashMap<>()).put(o.criterionId(), o.grade()));
        return of.stream().map(assessment -> new RecordedWorkplace(assessment, taken.getOrDefault(assessment.id(), Map.of()),
                grades.getOrDefault(assessment.id(), Map.of()), content)).toList();
    }

    /** Returns everything recorded for an assessment, in two queries. */
    RecordedWorkplace recorded(WorkplaceAssessment assessment) {
        Map<String, Taken> taken = new LinkedHashMap<>();
        measurements(assessment).forEach((measure, stored) -> taken.put(measure, stored.taken()));
        Map<String, Grade> grades = new LinkedHashMap<>();
        observations(assessment).forEach((criterion, stored) -> grades.put(criterion, stored.grade()));
        return new RecordedWorkplace(assessment, taken, grades, content);
    }

    /** Returns what was proposed when the assessment was saved, in order. */
    public List<Adjustment> proposed(long assessmentId) {
        return db.createQuery("from Adjustment where assessment.id = ?1 order by number", Adjustment.class).setParameter(1, assessmentId)
                .getResultList();
    }

    /**
     * Stores what was taken and seen, then brings findings and proposed settings in line with it; call within a transaction.
     *
     * @param taken by key: measures of the person, readings at the work place (lower-case names), ids of measured criteria
     * @param grades by id of an observed criterion
     */
    public void record(WorkplaceAssessment assessment, Map<String, Taken> taken, Map<String, Grade> grades) {
        if (assessment.id() == null) {
            persistAndFlush(assessment);
        } else {
            // a change of a measure alone must count as a change of the assessment, or two people would overwrite each other
            db.lock(assessment, LockModeType.OPTIMISTIC_FORCE_INCREMENT);
        }
        keepMeasurements(assessment, taken);
        keepObservations(assessment, grades);
        RecordedWorkplace recorded = new RecordedWorkplace(assessment, taken, grades, content);
        findings.follow(assessment, recorded.results());
        keepAdjustments(assessment, recorded.fit().map(FitResult::steps).orElse(List.of()));
    }

    private Map<String, RecordedMeasurement> measurements(WorkplaceAssessment assessment) {
        Map<String, RecordedMeasurement> stored = new LinkedHashMap<>();
        db.createQuery("from RecordedMeasurement where assessment = ?1 order by id", RecordedMeasurement.class).setParameter(1, assessment)
                .getResultList().forEach(measurement -> stored.put(measurement.measure(), measurement));
        return stored;
    }

    private Map<String, RecordedObservation> observations(WorkplaceAssessment assessment) {
        Map<String, RecordedObservation> stored = new LinkedHashMap<>();
        db.createQuery("from RecordedObservation where assessment = ?1 order by id", RecordedObservation.class).setParameter(1, assessment)
                .getResultList().forEach(observation -> stored.put(observation.criterionId(), observation));
        return stored;
    }

    private void keepMeasurements(WorkplaceAssessment assessment, Map<String, Taken> taken) {
        Map<String, RecordedMeasurement> stored = measurements(assessment);
        taken.forEach((measure, value) -> {
            RecordedMeasurement kept = stored.remove(measure);
            if (kept == null) {
                RecordedMeasurement made = new RecordedMeasurement(assessment, measure);
                made.takes(value);
                db.persist(made);
            } else if (!kept.taken().same(value)) {
                kept.takes(value);
            }
        });
        stored.values().forEach(db::remove);
    }

    private void keepObservations(WorkplaceAssessment assessment, Map<String, Grade> grades) {
        Map<String, RecordedObservation> stored = observations(assessment);
        grades.forEach((criterion, grade) -> {
            RecordedObservation kept = stored.remove(criterion);
            if (kept == null) {
                db.persist(new RecordedObservation(assessment, criterion, grade));
            } else {
                kept.grade(grade);
            }
        });
        stored.values().forEach(db::remove);
    }

    private void keepAdjustments(WorkplaceAssessment assessment, List<AdjustmentStep> steps) {
        Map<Part, Adjustment> stored = new HashMap<>();
        proposed(assessment.id()).forEach(adjustment -> stored.put(adjustment.part(), adjustment));
        for (AdjustmentStep step : steps) {
            BigDecimal found = Double.isNaN(step.now()) ? null : millimetres(step.now());
            Adjustment kept = stored.remove(step.part());
            if (kept == null) {
                db.persist(new Adjustment(assessment, step.number(), step.part(), found, millimetres(step.proposed())));
            } else {
                kept.propose(step.number(), found, millimetres(step.proposed()));
            }
        }
        stored.values().forEach(db::remove);
    }

    private static BigDecimal millimetres(double value) {
        return BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP);
    }
}
