package org.steadwork.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;

/** Finds planned visits from today on and answers with them as a calendar file. */
@ApplicationScoped
class VisitCalendars {

    private static final String PLANNED = "from Visit v join fetch v.caseFile c join fetch c.patient where v.attendance = ?1 and v.visitedOn >= ?2 and ";

    @Inject
    ClinicMarks marks;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @Inject
    @Any
    Instance<VisitTimes> times;

    List<Visit> ofCase(long caseId) {
        return planned("c.id = ?3", caseId);
    }

    List<Visit> ofClinician(long accountId) {
        return planned("c.clinician.id = ?3", accountId);
    }

    private List<Visit> planned(String whose, long id) {
        return db.createQuery(PLANNED + whose + " order by v.visitedOn, v.id", Visit.class).setParameter(1, Attendance.PLANNED)
                .setParameter(2, LocalDate.now(clock)).setParameter(3, id).getResultList();
    }

    Response answer(List<Visit> visits, Function<Visit, String> title, String place) {
        Map<Long, VisitTimes.Span> known = new HashMap<>();
        times.forEach(source -> known.putAll(source.of(visits)));
        return Response.ok(new VisitCalendar(marks.mark(), clock.getZone(), Instant.now(clock), known).of(visits, title, place).toString(), "text/calendar;charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"visits.ics\"").header("Cache-Control", "no-store").build();
    }
}
