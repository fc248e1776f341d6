package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;

/** Grip strength and active motion as measured in the cases. */
@ApplicationScoped
public class PhysicalMeasurements {

    @Inject
    EntityManager db;

    /** All grip tests of a case, the earliest first. */
    public List<GripMeasurement> grips(long caseId) {
        return db.createQuery("from GripMeasurement g where g.caseFile.id = ?1 order by g.testedOn, g.hand", GripMeasurement.class)
                .setParameter(1, caseId).getResultList();
    }

    /** All measured motions of a case, the earliest first. */
    public List<MotionMeasurement> motions(long caseId) {
        return db.createQuery("from MotionMeasurement m where m.caseFile.id = ?1 order by m.testedOn, m.id", MotionMeasurement.class)
                .setParameter(1, caseId).getResultList();
    }

    void keep(Object measurement) {
        db.persist(measurement);
    }
}
