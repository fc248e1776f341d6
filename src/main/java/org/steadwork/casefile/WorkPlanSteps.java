package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.casefile.workplan.NextStep;
import org.steadwork.web.Dates;

/** Steps of graded returns whose day has come, and plans held, put back or stopped that nothing has followed. */
@ApplicationScoped
class WorkPlanSteps implements Attention {

    @Inject
    WorkPlans plans;

    @Override
    public List<Entry> entries(LocalDate today) {
        return plans.ofOpenCases().stream().map(plan -> due(plan, today).or(() -> waiting(plan))).flatMap(Optional::stream).toList();
    }

    private static Optional<Entry> due(WorkPlan plan, LocalDate today) {
        return plan.stepDue(today).map(week -> entry(plan, week.from(), "Step due", "Return-to-work step due: " + (week.normal() ? "usual hours"
                : "week " + week.number() + ", " + week.hours()) + " from " + Dates.shown(week.from()) + ".", "Weigh the step",
                "#step"));
    }

    private static Optional<Entry> waiting(WorkPlan plan) {
        return plan.steps().stream().filter(step -> step.move() != NextStep.Move.UP).findFirst().map(step -> entry(plan,
                plan.weekRows().get(step.week() - 1).from(), "Plan to change", "The return plan was " + (step.move() == NextStep.Move.HOLD ? "held"
                : step.move() == NextStep.Move.BACK ? "put back a step" : "stopped") + "; no new plan is agreed and it is not ended.",
                "Agree the next plan", ""));
    }

    private static Entry entry(WorkPlan plan, LocalDate since, String label, String reason, String action, String place) {
        CaseFile file = plan.caseFile();
        return new Entry(file.id(), file.patient().name(), Urgency.TODAY, label, since, reason, action, WorkPlanView.path(file.id()) + place);
    }
}
