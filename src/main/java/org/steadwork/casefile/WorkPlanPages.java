package org.steadwork.casefile;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.workplan.NextStep;
import org.steadwork.kernel.Answer;
import org.steadwork.web.Answers;
import org.steadwork.web.Form;
import org.steadwork.web.Option;
import org.steadwork.web.PostedForm;

/** Work and return: the status over time, the plan that holds, its steps, and its end. */
@Path("/cases/{id: \\d+}/work-plan")
@RolesAllowed("clinician")
class WorkPlanPages {

    @CheckedTemplate(basePath = "casefile", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static class Templates {
        static native TemplateInstance workPlan(CaseHead head, WorkPlanView view);

        static native TemplateInstance workPlanEdit(CaseHead head, Form form, WorkPlanTerms preview, List<Option> days, List<Option> roundings,
                Integer number);
    }

    private static final BigDecimal MOST_HOURS = new BigDecimal("168");

    @Inject
    CaseHeads heads;

    @Inject
    WorkPlans plans;

    @Inject
    WorkStatuses statuses;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    PostedForm posted;

    @Inject
    Clock clock;

    @GET
    public Response show(@RestPath long id) {
        CaseHead head = heads.open(id, CaseTab.OUTCOMES);
        return Answers.page(Templates.workPlan(head, view(head.file(), Form.empty(), null)));
    }

    @POST
    @Path("/step")
    @Transactional
    public Response step(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        WorkPlan plan = plans.current(id).orElse(null);
        WorkPlanWeek due = plan == null ? null : plan.stepDue(LocalDate.now(clock)).orElse(null);
        if (due == null || form.version() != WorkPlanView.seen(plan, due)) {
            return Answers.conflict(page(file, form.conflictsWith(Form.empty(), due == null ? 0 : WorkPlanView.seen(plan, due)), null));
        }
        WorkPlanStep.WeekBefore before = due.number() == 1 ? WorkPlanStep.WeekBefore.UNKNOWN : before(form);
        String words = form.text("words", 300);
        NextStep advice = form.hasErrors() || due.number() == 1 ? null : NextStep.of(before.worstPain(), before.settled(), before.workedMinutes(),
                plan.weekRows().get(due.number() - 2).minutes(), before.daysMissed() == null ? 0 : before.daysMissed(), false);
        if (form.is("do", "weigh") && !form.hasErrors()) {
            return Answers.page(page(file, form, advice));
        }
        NextStep.Move move = form.requiredChoice("move", "The decision", NextStep.Move.class);
        if (move == NextStep.Move.ASK || due.number() == 1 && (move == NextStep.Move.HOLD || move == NextStep.Move.BACK)) {
            form.error("move", "The decision: choose one of the answers offered.");
        }
        if (move != null && move != NextStep.Move.UP && words == null && form.error("words") == null) {
            form.error("words", "Say in a few words why the step is not taken.");
        }
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, form, advice));
        }
        plans.getEntityManager().persist(new WorkPlanStep(plan, due.number(), move, before, words, account.displayName(), Instant.now(clock)));
        audit.record("decided a return-to-work step", file.patient().id(), id, null);
        return Answers.seeOther(WorkPlanView.path(id) + (move == NextStep.Move.HOLD || move == NextStep.Move.BACK ? "/edit" : ""));
    }

    @POST
    @Path("/end")
    @Transactional
    public Response end(@RestPath long id) {
        CaseFile file = heads.find(id);
        Form form = posted.read();
        WorkPlan plan = plans.current(id).orElse(null);
        if (plan == null || form.version() != plan.number()) {
            return Answers.conflict(page(file, form.conflictsWith(Form.empty(), plan == null ? 0 : plan.number()), null));
        }
        String reason = form.requiredText("endReason", "The reason", 300);
        if (form.hasErrors()) {
            return Answers.unprocessable(page(file, form, null));
        }
        plan.end(LocalDate.now(clock), reason);
        audit.record("ended a return-to-work plan", file.patient().id(), id, null);
        return Answers.seeOther(WorkPlanView.path(id));
    }

    private static WorkPlanStep.WeekBefore before(Form form) {
        Integer pain = form.integer("worstPain", "Worst pain at work", 0, 10);
        Answer settled = form.choice("settled", "Settled by the next morning", Answer.class);
        BigDecimal hours = form.decimal("workedHours", "Hours worked", BigDecimal.ZERO, MOST_HOURS, 2, "h");
        Integer missed = form.integer("daysMissed", "Days missed", 0, 7);
        return new WorkPlanStep.WeekBefore(pain, settled == null ? Answer.NOT_ASKED : settled,
                hours == null ? null : hours.multiply(BigDecimal.valueOf(60)).setScale(0, java.math.RoundingMode.HALF_UP).intValueExact(), missed);
    }

    private TemplateInstance page(CaseFile file, Form form, NextStep advice) {
        return Templates.workPlan(heads.head(file, CaseTab.OUTCOMES), view(file, form, advice));
    }

    private WorkPlanView view(CaseFile file, Form form, NextStep advice) {
        LocalDate today = LocalDate.now(clock);
        return new WorkPlanView(file, today, WorkTimelineView.of(statuses.of(file.id()), file, today), plans.of(file.id()), form, advice);
    }
}
