package org.steadwork.exercise;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.web.Answers;

/** The sheet for the patient, to print. */
@Path("/cases/{id: \\d+}/programme/sheet")
@RolesAllowed("clinician")
class SheetPages {

    @Inject
    CaseHeads heads;

    @Inject
    Sheets sheets;

    @Inject
    AuditTrail audit;

    @GET
    public Response sheet(@RestPath long id) {
        CaseFile file = heads.find(id);
        audit.record("printed the exercise sheet", file.patient().id(), id, null);
        return Answers.page(sheets.of(file, null));
    }
}
