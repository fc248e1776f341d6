package org.steadwork.casefile;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.web.ReadOnce;

/** The visits of the cases. */
@ApplicationScoped
public class Visits implements PanacheRepository<Visit> {

    /** All visits of a case, the earliest first. */
    @ReadOnce
    public List<Visit> of(long caseId) {
        return list("caseFile.id = ?1 order by number", caseId);
    }

    public Optional<Visit> numbered(long caseId, int number) {
        return find("from Visit v join fetch v.caseFile where v.caseFile.id = ?1 and v.number = ?2", caseId, number).firstResultOptional();
    }

    /** The visit of that day which took place or is planned, if there is one. */
    public Optional<Visit> on(long caseId, LocalDate day) {
        // which of the few is asked here: with the attendances in the query, H2 goes through all visits of the clinic that have one of them
        return list("caseFile.id = ?1 and visitedOn = ?2 order by number desc", caseId, day).stream()
                .filter(visit -> visit.attendance() == Attendance.ATTENDED || visit.attendance() == Attendance.PLANNED).findFirst();
    }

    /** The latest visit after a place in the case's course that was held or missed, if there is one. */
    public Optional<Visit> latestAfter(long caseId, LocalDate day, int number) {
        return find("caseFile.id = ?1 and attendance in ?2 and (visitedOn > ?3 or visitedOn = ?3 and number > ?4) order by visitedOn desc, number desc",
                caseId, List.of(Attendance.ATTENDED, Attendance.MISSED), day, number).firstResultOptional();
    }

    /** Day of the last visit that took place, if there was one. */
    public Optional<LocalDate> lastAttended(long caseId) {
        return Optional.ofNullable(getEntityManager()
                .createQuery("select max(v.visitedOn) from Visit v where v.caseFile.id = ?1 and v.attendance = ?2", LocalDate.class)
                .setParameter(1, caseId).setParameter(2, Attendance.ATTENDED).getSingleResult());
    }

    /** Makes the case's next visit; two made at once collide on the number and one is refused. */
    public Visit add(CaseFile caseFile, LocalDate day, VisitKind kind, Attendance attendance) {
        int last = getEntityManager().createQuery("select coalesce(max(v.number), 0) from Visit v where v.caseFile.id = ?1", Integer.class)
                .setParameter(1, caseFile.id()).getSingleResult();
        Visit visit = new Visit(caseFile, last + 1, day, kind, attendance);
        persist(visit);
        return visit;
    }
}
