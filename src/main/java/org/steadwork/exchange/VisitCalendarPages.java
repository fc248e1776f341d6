package org.steadwork.exchange;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;

/** The planned visits of a case as a calendar file for the patient. */
@Path("/cases/{id: \\d+}/visits.ics")
@RolesAllowed("clinician")
class VisitCalendarPages {

    @Inject
    CaseHeads heads;

    @Inject
    VisitCalendars calendars;

    @Inject
    AuditTrail audit;

    @ConfigProperty(name = "steadwork.clinic.name")
    Optional<String> clinicName;

    @ConfigProperty(name = "steadwork.clinic.address")
    Optional<String> address;

    @GET
    public Response ofCase(@RestPath long id) {
        CaseFile file = heads.find(id);
        audit.record("handed out the planned visits as a calendar", file.patient().id(), id, null);
        return calendars.answer(calendars.ofCase(id), visit -> "Appointment" + clinicName.map(name -> ", " + name).orElse(""),
                address.map(text -> text.replace(";", ",")).orElse(null));
    }
}
