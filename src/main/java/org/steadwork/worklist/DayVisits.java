package org.steadwork.worklist;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitTimes;
import org.steadwork.casefile.access.CaseAccess;

/** The visits of a day, by time where somebody knows it, by name else; a fixed number of queries. */
@ApplicationScoped
class DayVisits {

    /** What one looks over; the rest of a large clinic's day is asked for. */
    static final int FIRST = 60;

    /** A visit; {@code time} is null where none is known, {@code open} tells whether who asks may open its case. */
    record Row(Visit visit, LocalTime time, boolean open) {
    }

    /** The first {@code rows} of {@code count} visits. */
    record Shown(List<Row> rows, int count) {

        public boolean cut() {
            return rows.size() < count;
        }
    }

    @Inject
    CaseAccess access;

    @Inject
    EntityManager db;

    @Inject
    @Any
    Instance<VisitTimes> times;

    /** @param most how many are shown at most */
    Shown on(LocalDate day, Whose whose, int most) {
        TypedQuery<Long> asked = db.createQuery("select v.id from Visit v join v.caseFile c where v.visitedOn = :day and v.attendance <> :cancelled"
                + (whose.all() ? "" : " and c.clinician.id = :clinician") + " order by c.patient.familyName, c.patient.givenName, v.id", Long.class).setParameter("day", day)
                .setParameter("cancelled", Attendance.CANCELLED);
        List<Long> byName = (whose.all() ? asked : asked.setParameter("clinician", whose.clinician())).getResultList();
        if (byName.isEmpty()) {
            return new Shown(List.of(), 0);
        }
        Map<Long, LocalTime> known = new HashMap<>();
        times.forEach(bean -> known.putAll(bean.on(day)));
        List<Long> first = byName.stream().sorted(Comparator.comparing(known::get, Comparator.nullsLast(Comparator.naturalOrder()))).limit(most).toList();
        Map<Long, Visit> visits = db.createQuery("select v from Visit v join fetch v.caseFile c join fetch c.patient join fetch c.clinician where v.id in :ids", Visit.class)
                .setParameter("ids", first).getResultStream().collect(Collectors.toMap(Visit::id, Function.identity()));
        Set<Long> open = access.openOf(visits.values().stream().map(visit -> visit.caseFile().id()).collect(Collectors.toSet()));
        return new Shown(first.stream().map(visits::get).map(visit -> new Row(visit, known.get(visit.id()), open.contains(visit.caseFile().id()))).toList(), byName.size());
    }
}
