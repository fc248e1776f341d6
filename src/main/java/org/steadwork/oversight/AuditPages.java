package org.steadwork.oversight;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;
import org.steadwork.account.Accounts;
import org.steadwork.account.AuditCheck;
import org.steadwork.account.AuditTrail;
import org.steadwork.web.Answers;
import org.steadwork.web.Option;

/** The audit trail for the lead: looking for entries, and checking that none was changed. */
@Path("/clinic/audit")
@RolesAllowed("lead")
class AuditPages {

    @CheckedTemplate(basePath = "oversight", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance audit(AuditFilter filter, List<Option> people, List<AuditRow> rows, AuditPaging paging, AuditCheck.Result check);
    }

    private static final int ROWS_A_PAGE = 50;

    @Inject
    AuditRows rows;

    @Inject
    Accounts accounts;

    @Inject
    AuditCheck check;

    @Inject
    AuditTrail audit;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestQuery String person, @RestQuery String patient, @RestQuery String action, @RestQuery String from, @RestQuery String until,
            @RestQuery String page) {
        AuditFilter filter = new AuditFilter(person, patient, action, from, until, clock.getZone());
        AuditPaging paging = AuditPaging.of(page, rows.count(filter), ROWS_A_PAGE);
        List<Option> people = accounts.all().stream().map(account -> new Option(account.id().toString(), account.displayName())).toList();
        return Answers.page(Templates.audit(filter, people, rows.latest(filter, paging.skip(), ROWS_A_PAGE), paging, check.latest()));
    }

    /** Checks the whole trail; the page then shows what was found. */
    @POST
    @Path("/check")
    public Response checkWhole() {
        audit.head();
        AuditCheck.Result result = check.whole();
        audit.record("checked the audit trail", null, null, result.sound() ? "sound" : "broken");
        return Answers.seeOther("/clinic/audit#check");
    }
}
