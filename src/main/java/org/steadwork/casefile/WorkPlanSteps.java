package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.casefile.workplan.NextStep;
import org.steadwork.web.Dates;

/** Steps of graded returns whose day has come, and plans held, put back or stopped that nothing has followed. */
@ApplicationScoped
class WorkPlanSteps implements Attention {

    private static final String STEP = "work_plan_step";
    private static final String WAITING = "work_plan_waiting";

    @Inject
    WorkPlans plans;

    @Inject
    AttentionRules rules;

    @Override
    public Set<String> rules() {
        return Set.of(STEP, WAITING);
    }

    @Override
    public List<Entry> entries(LocalDate today, CaseScope scope) {
        return plans.running(scope).stream().map(plan -> due(plan, today).or(() -> waiting(plan))).flatMap(Optional::stream).toList();
    }

    private Optional<Entry> due(WorkPlan plan, LocalDate today) {
        return plan.stepDue(today).map(week -> entry(STEP, plan, week.number(), week.from(), "#step", Map.of("day", Dates.shown(week.from()),
                "week", week.normal() ? "usual hours" : "week " + week.number() + ", " + week.hours())));
    }

    private Optional<Entry> waiting(WorkPlan plan) {
        return plan.steps().stream().filter(step -> step.move() != NextStep.Move.UP).findFirst().map(step -> entry(WAITING, plan, step.week(),
                plan.weekRows().get(step.week() - 1).from(), "", Map.of("move", step.move() == NextStep.Move.HOLD ? "held"
                : step.move() == NextStep.Move.BACK ? "put back a step" : "stopped")));
    }

    private Entry entry(String rule, WorkPlan plan, int week, LocalDate since, String place, Map<String, String> facts) {
        CaseFile file = plan.caseFile();
        return rules.rule(rule).entry(file, plan.number() + "/" + week, since, WorkPlanView.path(file.id()) + place, facts);
    }
}
