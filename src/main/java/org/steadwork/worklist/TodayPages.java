package org.steadwork.worklist;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.access.CaseAccess;
import org.steadwork.web.Answers;

/** Today: who needs me now, and why. */
@Path("/")
@RolesAllowed("staff")
class TodayPages {

    @CheckedTemplate(basePath = "worklist", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance today(String day, LocalDate on, List<Visit> visits, Set<Long> open, Worklist worklist);
    }

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);

    @Inject
    Worklists worklists;

    @Inject
    CurrentAccount account;

    @Inject
    CaseAccess access;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @GET
    public Response today() {
        LocalDate today = LocalDate.now(clock);
        List<Visit> visits = db.createQuery("select v from Visit v join fetch v.caseFile c join fetch c.patient join fetch c.clinician"
                + " where v.visitedOn = ?1 and v.attendance <> ?2 order by c.patient.familyName", Visit.class).setParameter(1, today)
                .setParameter(2, Attendance.CANCELLED).getResultList();
        Worklist worklist = account.clinician() ? worklists.on(today) : Worklist.hidden();
        return Answers.page(Templates.today(DAY.format(today), today, visits, access.openOf(visits.stream().map(visit -> visit.caseFile().id()).toList()), worklist));
    }
}
