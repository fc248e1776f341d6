package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitTimes;
import org.steadwork.casefile.access.CaseAccess;

/** The visits of a day, by time where somebody knows it, by name else. */
@ApplicationScoped
class DayVisits {

    /** A visit; {@code time} is null where none is known, {@code open} tells whether who asks may open its case. */
    record Row(Visit visit, LocalTime time, boolean open) {
    }

    @Inject
    CaseAccess access;

    @Inject
    EntityManager db;

    @Inject
    @Any
    Instance<VisitTimes> times;

    List<Row> on(LocalDate day) {
        List<Visit> visits = db.createQuery("select v from Visit v join fetch v.caseFile c join fetch c.patient join fetch c.clinician"
                + " where v.visitedOn = ?1 and v.attendance <> ?2 order by c.patient.familyName, c.patient.givenName, v.id", Visit.class).setParameter(1, day)
                .setParameter(2, Attendance.CANCELLED).getResultList();
        Map<Long, LocalTime> known = new HashMap<>();
        times.forEach(bean -> known.putAll(bean.on(day)));
        Set<Long> open = access.openOf(visits.stream().map(visit -> visit.caseFile().id()).collect(Collectors.toSet()));
        return visits.stream().map(visit -> new Row(visit, known.get(visit.id()), open.contains(visit.caseFile().id())))
                .sorted(Comparator.comparing(Row::time, Comparator.nullsLast(Comparator.naturalOrder()))).toList();
    }
}
