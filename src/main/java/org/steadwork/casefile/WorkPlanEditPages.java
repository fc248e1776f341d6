package org.steadwork.casefile;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.PostedForm;

/** Agreeing a graded return, or the next one: its weeks are shown before it is kept. */
@Path("/cases/{id: \\d+}/work-plan/edit")
@RolesAllowed("clinician")
class WorkPlanEditPages {

    @Inject
    CaseHeads heads;

    @Inject
    WorkPlans plans;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response form(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.OUTCOMES);
        LocalDate today = LocalDate.now(clock);
        List<WorkPlan> all = plans.of(id);
        return Answers.page(page(head, all.isEmpty() ? WorkPlanForm.first(head.file(), today) : WorkPlanForm.next(all.get(0), today), null, all));
    }

    @POST
    @Transactional
    public Response save(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        List<WorkPlan> all = plans.of(id);
        WorkPlanTerms terms = WorkPlanForm.read(form, file, LocalDate.now(clock), all.isEmpty());
        if (!file.open()) {
            form.error("startsOn", "The case is closed.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(heads.head(file, CaseTab.OUTCOMES), form, null, all));
        }
        int latest = all.isEmpty() ? 0 : all.get(0).number();
        if (form.version() != latest) {
            form.conflictsWith(all.isEmpty() ? Form.empty() : WorkPlanForm.show(all.get(0).terms()), latest);
            return Answers.conflict(page(heads.head(file, CaseTab.OUTCOMES), form, terms, all));
        }
        if (!form.is("do", "save")) {
            return Answers.page(page(heads.head(file, CaseTab.OUTCOMES), form, terms, all));
        }
        plans.persist(new WorkPlan(file, latest + 1, terms, account.displayName(), Instant.now(clock)));
        audit.record("agreed a return-to-work plan", file.patient().id(), id, "plan " + (latest + 1));
        return Answers.seeOther(WorkPlanView.path(id));
    }

    private static TemplateInstance page(CaseHead head, Form form, WorkPlanTerms preview, List<WorkPlan> all) {
        return WorkPlanPages.Templates.workPlanEdit(head, form, preview, WorkPlanForm.days(), WorkPlanForm.roundings(),
                all.isEmpty() ? 1 : all.get(0).number() + 1);
    }
}
