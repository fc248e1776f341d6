package org.steadwork.exchange;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.AuditTrail;
import org.steadwork.diary.BookedVisits;
import org.steadwork.web.Dates;

/** The visits of one clinician as a calendar file: a day, a week, at most 31 days. */
@Path("/diary/calendar.ics")
@RolesAllowed("staff")
class DiaryCalendarPages {

    private static final int LONGEST_DAYS = 31;

    @Inject
    BookedVisits visits;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    /** What is missing or wrong in the address is taken as today; without a clinician the file is empty. */
    @GET
    public Response calendar(@RestQuery String clinician, @RestQuery String from, @RestQuery String to) {
        LocalDate first = day(from, LocalDate.now(clock));
        LocalDate last = day(to, first);
        LocalDate end = last.isBefore(first) ? first : last.isAfter(first.plusDays(LONGEST_DAYS)) ? first.plusDays(LONGEST_DAYS) : last;
        List<BookedVisits.Booked> own = visits.between(first, end).stream().filter(one -> one.clinician().id().toString().equals(clinician)).toList();
        audit.record("handed out the diary as a calendar", null, null, own.size() + " visits");
        return Response.ok(DiaryCalendar.of(own, clock.getZone(), Instant.now(clock)).toString(), "text/calendar;charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"diary-" + first + ".ics\"").header("Cache-Control", "no-store").build();
    }

    private static LocalDate day(String typed, LocalDate otherwise) {
        try {
            return typed == null || typed.isBlank() ? otherwise : Dates.parse(typed);
        } catch (DateTimeException e) {
            return otherwise;
        }
    }
}
