package org.steadwork.redflag;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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
    RedFlagScreens screens;

    @Inject
    ReportedRegions reported;

    @Inject
    CurrentAccount account;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id) {
        CaseFile file = heads.find(id);
        Set<String> regions = new LinkedHashSet<>(reported.of(id));
        screens.latest(id).ifPresent(screen -> regions.addAll(screen.regions()));
        List<String> ordered = content.catalogue().regions().stream().filter(region -> regions.isEmpty() || regions.contains(region)).toList();
        audit.record("viewed safety-net sheet", file.patient().id(), id, null);
        return Answers.page(RedFlagPages.Templates.safetyNet(file, account.displayName(), content.safetyNet().core(),
                content.safetyNet().warnings(ordered), ordered.stream().map(content::region).toList(), LocalDate.now(clock)));
    }
}
