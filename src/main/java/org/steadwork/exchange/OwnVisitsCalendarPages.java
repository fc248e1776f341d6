package org.steadwork.exchange;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Visit;

/** The planned visits of who is signed in. An event bears the file number, which says nothing to whoever else sees the calendar. */
@Path("/my-visits.ics")
@RolesAllowed("clinician")
class OwnVisitsCalendarPages {

    @Inject
    VisitCalendars calendars;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @GET
    public Response mine() {
        List<Visit> visits = calendars.ofClinician(account.id());
        audit.record("took out own planned visits as a calendar", null, null, visits.size() + " visits");
        return calendars.answer(visits, visit -> visit.kind().label() + ", file " + visit.caseFile().patient().fileNumber(), null);
    }
}
