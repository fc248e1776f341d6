package org.steadwork.casefile;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.kernel.StaleVersionException;
import org.steadwork.web.Answers;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Closing a case, which open red flags can bar, and opening it again. */
@Path("/cases/{id: \\d+}/close")
@RolesAllowed("clinician")
class CaseClosePages {

    @CheckedTemplate(basePath = "casefile", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance caseClose(CaseHead head, Form form, List<Option> reasons, List<String> bars);
    }

    @Inject
    CaseHeads heads;

    @Inject
    @Any
    Instance<CasePart> parts;

    @Inject
    AuditTrail audit;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.VISITS);
        Form form = Form.empty().with("version", head.file().version()).with("closedOn", Dates.shown(LocalDate.now(clock)));
        return Answers.page(page(head, form));
    }

    @POST
    @Transactional
    public Response close(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        if (!file.open()) {
            return Answers.conflict(page(heads.head(file, CaseTab.VISITS), form));
        }
        LocalDate on = form.requiredDate("closedOn", "Day of closing");
        if (on != null && (on.isBefore(file.openedOn()) || on.isAfter(LocalDate.now(clock)))) {
            form.error("closedOn", "A case is closed between its opening, " + Dates.shown(file.openedOn()) + ", and today. You entered "
                    + Dates.shown(on) + ".");
        }
        CloseReason reason = form.requiredChoice("reason", "Reason", CloseReason.class);
        String note = form.text("note", 2000);
        bars(file).forEach(bar -> form.error("reason", bar));
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.VISITS), form));
        }
        try {
            file.requireVersion(form.version());
        } catch (StaleVersionException stale) {
            Form stored = Form.empty().with("closedOn", form.value("closedOn"));
            return Answers.conflict(page(heads.head(file, CaseTab.VISITS), form.conflictsWith(stored, stale.stored())));
        }
        file.close(on, reason, note);
        audit.record("closed case", file.patient().id(), id, null);
        return Answers.seeOther(CaseTab.VISITS.href(id));
    }

    @POST
    @Path("/reopen")
    @Transactional
    public Response reopen(@RestPath long id) {
        CaseFile file = heads.find(id);
        if (!file.open()) {
            file.reopen();
            audit.record("reopened case", file.patient().id(), id, null);
        }
        return Answers.seeOther(CaseTab.VISITS.href(id));
    }

    private TemplateInstance page(CaseHead head, Form form) {
        return Templates.caseClose(head, form, Option.of(CloseReason.class, CloseReason::label), bars(head.file()));
    }

    private List<String> bars(CaseFile file) {
        return parts.stream().flatMap(part -> part.closingBars(file).stream()).toList();
    }
}
