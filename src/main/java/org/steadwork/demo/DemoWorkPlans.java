package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.casefile.WorkPlan;
import org.steadwork.casefile.WorkPlanStep;
import org.steadwork.casefile.WorkPlanTerms;
import org.steadwork.casefile.WorkPlans;
import org.steadwork.casefile.workplan.GradedReturn;
import org.steadwork.casefile.workplan.NextStep;
import org.steadwork.content.Entry;
import org.steadwork.kernel.Answer;

/** The graded returns agreed at the visits, the steps decided there and the end of a plan, in this order. */
@ApplicationScoped
class DemoWorkPlans implements DemoVisitPart {

    private static final List<DayOfWeek> WEEK_DAYS = List.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY,
            DayOfWeek.FRIDAY);

    @Inject
    WorkPlans plans;

    @Inject
    EntityManager db;

    @Override
    public int order() {
        return 65; // before the letters, which quote the plan
    }

    @Override
    public void load(DemoVisit visit) {
        for (Entry plan : visit.entry().entries("return_plans")) {
            agree(visit, plan);
            plan.entries("steps").forEach(step -> decide(visit, step));
        }
        visit.entry().entries("return_steps").forEach(step -> decide(visit, step));
        visit.entry().entry("return_end").ifPresent(end -> current(visit, end).end(LocalDate.parse(end.text("on")), end.text("reason")));
    }

    private void agree(DemoVisit visit, Entry plan) {
        List<WorkPlan> before = plans.of(visit.file().id());
        int minutes = new BigDecimal(plan.text("normal_hours")).multiply(BigDecimal.valueOf(60)).intValueExact();
        WorkPlanTerms terms = new WorkPlanTerms(LocalDate.parse(plan.text("from")), new GradedReturn(minutes, plan.integer("start_percent"),
                plan.integer("weeks")), WEEK_DAYS, plan.optionalText("restrictions").orElse(null), WorkPlanTerms.USUAL_STEP_RULE,
                plan.text("agreed_with"), plan.optionalText("agreed_on").map(LocalDate::parse).orElse(visit.day()),
                plan.optionalText("why_changed").orElse(null));
        plans.persist(new WorkPlan(visit.file(), before.size() + 1, terms, visit.clinician().displayName(), visit.moment()));
        db.flush();
    }

    private void decide(DemoVisit visit, Entry step) {
        Integer pain = step.has("pain") ? step.integer("pain") : null;
        Integer worked = step.has("worked_hours") ? (int) Math.round(step.number("worked_hours") * 60) : null;
        Answer settled = step.has("settled") ? step.flag("settled") ? Answer.YES : Answer.NO : Answer.NOT_ASKED;
        db.persist(new WorkPlanStep(current(visit, step), step.integer("week"), step.constant("move", NextStep.Move.class),
                new WorkPlanStep.WeekBefore(pain, settled, worked, step.has("missed") ? step.integer("missed") : null),
                step.optionalText("words").orElse(null), visit.clinician().displayName(), visit.moment()));
        db.flush();
    }

    private WorkPlan current(DemoVisit visit, Entry entry) {
        return plans.current(visit.file().id()).orElseThrow(() -> entry.problem("no return plan holds at this visit"));
    }
}
