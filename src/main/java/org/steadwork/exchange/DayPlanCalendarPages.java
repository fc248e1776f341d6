package org.steadwork.exchange;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.exercise.DayPlanView;
import org.steadwork.exercise.PlannedDays;

/** The day plan as a calendar file, from today to the next review or for eight weeks. */
@Path("/cases/{id: \\d+}/programme/day-plan.ics")
@RolesAllowed("clinician")
class DayPlanCalendarPages {

    private static final int WEEKS_WITHOUT_A_REVIEW = 8;

    @Inject
    CaseHeads heads;

    @Inject
    PlannedDays planned;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    @GET
    public Response calendar(@RestPath long id) {
        CaseFile file = heads.find(id);
        DayPlanView view = planned.of(file).orElseThrow(NotFoundException::new);
        LocalDate today = LocalDate.now(clock);
        LocalDate review = file.nextReviewOn();
        LocalDate last = review != null && review.isAfter(today) ? review : today.plusWeeks(WEEKS_WITHOUT_A_REVIEW);
        audit.record("handed out the day plan as a calendar", file.patient().id(), id, null);
        return Response.ok(new DayPlanCalendar(view, clock.getZone(), today, last).calendar().toString(), "text/calendar;charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"day-plan.ics\"").header("Cache-Control", "no-store").build();
    }
}
