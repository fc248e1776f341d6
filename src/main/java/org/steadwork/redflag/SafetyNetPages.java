package org.steadwork.redflag;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.web.Answers;

/** The safety-net sheet for the patient, made to be printed. */
@Path("/cases/{id: \\d+}/red-flags/safety-net")
@RolesAllowed("clinician")
class SafetyNetPages {

    @Inject
    CaseHeads heads;

    @Inject
    RedFlagContent content;

    @Inject
    SafetyNets safetyNets;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id) {
        CaseFile file = heads.find(id);
        List<String> ordered = safetyNets.regions(id);
        audit.record("viewed safety-net sheet", file.patient().id(), id, null);
        return Answers.page(RedFlagPages.Templates.safetyNet(file, account.displayName(), content.safetyNet().core(),
                content.safetyNet().warnings(ordered), ordered.stream().map(content::region).toList(), LocalDate.now(clock)));
    }
}
