package org.steadwork.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.steadwork.web.Answers;

/** The lead's page: who may do what, and who did what. */
@Path("/clinic")
@RolesAllowed("lead")
class ClinicPages {

    @CheckedTemplate(basePath = "account", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance clinic(List<Account> accounts, List<AuditEvent> events, AuditCheck.Result check);
    }

    private static final int EVENTS_SHOWN = 10;

    @Inject
    Accounts accounts;

    @Inject
    AuditTrail audit;

    @Inject
    AuditCheck check;

    @GET
    public Response clinic() {
        return Answers.page(Templates.clinic(accounts.all(), audit.latest(EVENTS_SHOWN), check.latest()));
    }
}
