package org.steadwork.casefile;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.steadwork.casefile.workplan.NextStep;
import org.steadwork.kernel.Answer;
import org.steadwork.web.Dates;
import org.steadwork.web.Form;
import org.steadwork.web.Option;

/**
 * What the page of work and return shows.
 *
 * @param plans the newest first
 * @param advice what the rules say about the step due, or null when it cannot be said yet
 */
record WorkPlanView(CaseFile file, LocalDate today, WorkTimelineView timeline, List<WorkPlan> plans, Form form, NextStep advice) {

    static String path(long id) {
        return "/cases/" + id + "/work-plan";
    }

    /** A number that tells which step of which plan a form was made for. */
    static int seen(WorkPlan plan, WorkPlanWeek due) {
        return plan.number() * 100 + due.number();
    }

    /** The plan that holds, or null. */
    public WorkPlan current() {
        return plans.isEmpty() || !plans.get(0).running() ? null : plans.get(0);
    }

    public List<WorkPlan> earlier() {
        return current() == null ? plans : plans.subList(1, plans.size());
    }

    /** The step to decide now, or null. */
    public WorkPlanWeek due() {
        return current() == null ? null : current().stepDue(today).orElse(null);
    }

    /** The number by which the form of the step due is told from a later one. */
    public int stepVersion() {
        return seen(current(), due());
    }

    /** The step that changed the course, after which a new plan is wanted; or null. */
    public WorkPlanStep turned() {
        return current() == null ? null : current().steps().stream().filter(step -> step.move() != NextStep.Move.UP).findFirst().orElse(null);
    }

    public int weekNow() {
        return current() == null ? 0 : current().weekOn(today);
    }

    /** Says what stands against a week of the current plan. */
    public String stateOf(WorkPlanWeek week) {
        Optional<WorkPlanStep> step = current().steps().stream().filter(decided -> decided.week() == week.number()).findFirst();
        return step.map(decided -> decided.decision() + (decided.words() == null ? "" : ": " + decided.words()))
                .orElse(week.from().isAfter(today) ? "from " + Dates.shown(week.from()) : "to be decided");
    }

    /** How often the plans of this case went back a step. */
    public long stepsBack() {
        return plans.stream().flatMap(plan -> plan.steps().stream()).filter(step -> step.move() == NextStep.Move.BACK).count();
    }

    public List<Option> settledAnswers() {
        return Option.of(Answer.class, Answer::label);
    }

    public List<Option> moves() {
        return Arrays.stream(NextStep.Move.values()).filter(move -> move != NextStep.Move.ASK)
                .filter(move -> due() == null || due().number() > 1 || move == NextStep.Move.UP || move == NextStep.Move.STOP)
                .map(move -> new Option(move.name().toLowerCase(java.util.Locale.ROOT), words(move))).toList();
    }

    private String words(NextStep.Move move) {
        boolean begin = due() != null && due().number() == 1;
        return switch (move) {
            case UP -> begin ? "begin as planned" : "step up";
            case HOLD -> "hold";
            case BACK -> "back a step";
            case STOP -> "stop the plan";
            case ASK -> "ask";
        };
    }

    /** Says the advice of the rules, or what is missing for it. */
    public String advised() {
        if (advice == null) {
            return "";
        }
        String move = switch (advice.move()) {
            case UP -> "The rules say: step up";
            case HOLD -> "The rules say: hold";
            case BACK -> "The rules say: back a step";
            case STOP -> "The rules say: stop the plan";
            case ASK -> "The rules cannot say yet";
        };
        return move + " (" + String.join(", ", advice.reasons()) + "). You decide.";
    }
}
