package org.steadwork.exchange.fhir;

import java.util.List;
import java.util.Optional;
import org.hl7.fhir.r4.model.CarePlan;
import org.hl7.fhir.r4.model.CarePlan.CarePlanActivityDetailComponent;
import org.hl7.fhir.r4.model.CarePlan.CarePlanActivityStatus;
import org.hl7.fhir.r4.model.CarePlan.CarePlanIntent;
import org.hl7.fhir.r4.model.CarePlan.CarePlanStatus;
import org.hl7.fhir.r4.model.StringType;
import org.steadwork.casefile.WorkPlan;
import org.steadwork.casefile.WorkPlanWeek;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.PrescribedSide;
import org.steadwork.exercise.dayplan.DoseWords;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/** What was agreed: the exercise programme and the graded return to work, each a CarePlan. */
final class PlanResources {

    private final Subject about;
    private final ExerciseCatalogue catalogue;

    PlanResources(Subject about, ExerciseCatalogue catalogue) {
        this.about = about;
        this.catalogue = catalogue;
    }

    void add(CaseRecord record) {
        if (!record.prescriptions().isEmpty() && about.has(InformationCategory.EXERCISE_PROGRAMME)) {
            programme(record);
        }
        if (about.has(InformationCategory.WORK_MODIFICATIONS)) {
            record.workPlans().forEach(this::workPlan);
        }
    }

    private void programme(CaseRecord record) {
        boolean running = record.file().open() && record.prescriptions().stream().anyMatch(Prescription::current);
        CarePlan plan = plan("Home exercise programme", running ? CarePlanStatus.ACTIVE : CarePlanStatus.COMPLETED);
        record.goals().stream().map(ScoreResources::goalName).filter(about.draft()::has).forEach(goal -> plan.addGoal(about.draft().to(goal, null)));
        record.prescriptions().forEach(given -> exercise(plan.addActivity().getDetail(), given));
        about.draft().add("programme", plan, "Home exercise programme, " + record.prescriptions().size() + " exercises in all");
    }

    private void exercise(CarePlanActivityDetailComponent detail, Prescription given) {
        Optional<Exercise> exercise = catalogue.find(given.exerciseKey());
        String side = given.side() == PrescribedSide.NONE ? "" : ", " + given.side().label();
        detail.setStatus(given.current() ? CarePlanActivityStatus.INPROGRESS : CarePlanActivityStatus.STOPPED);
        detail.setCode(Codes.words(exercise.map(Exercise::name).orElse(given.exerciseKey()) + side));
        detail.setScheduled(new StringType(DoseWords.of(given.dose(), exercise.map(Exercise::per).orElse(""))));
        detail.setDescription("Given on " + Dates.shown(given.startedOn()) + ". Pain during it at most " + given.painCeiling() + " of 10."
                + (given.effort() == null ? "" : " " + given.effort()) + (given.note() == null ? "" : " " + given.note()));
        if (!given.current()) {
            detail.setStatusReason(Codes.words("Ended " + Dates.shown(given.endedOn()) + (given.endReason() == null ? "" : ": " + given.endReason())));
        }
    }

    private void workPlan(WorkPlan agreed) {
        CarePlan plan = plan("Graded return to work, plan " + agreed.number(), agreed.running() ? CarePlanStatus.ACTIVE : CarePlanStatus.COMPLETED);
        plan.setPeriod(CareResources.period(agreed.terms().startsOn(), agreed.endedOn()));
        List<WorkPlanWeek> weeks = agreed.weekRows();
        for (WorkPlanWeek week : weeks) {
            CarePlanActivityDetailComponent detail = plan.addActivity().getDetail();
            detail.setStatus(agreed.running() ? CarePlanActivityStatus.SCHEDULED : CarePlanActivityStatus.UNKNOWN);
            detail.setCode(Codes.words("Hours at work"));
            detail.setScheduled(CareResources.period(week.from(), week.normal() ? null : week.until()));
            detail.setDescription((week.normal() ? "Normal week: " : "Week " + week.number() + ": ") + week.hours());
        }
        if (agreed.terms().restrictions() != null) {
            plan.addNote().setText(agreed.terms().restrictions());
        }
        about.draft().add("work plan " + agreed.id(), plan, "Graded return to work from " + Dates.shown(agreed.terms().startsOn()) + " in " + (weeks.size() - 1) + " weeks"
                + (agreed.running() ? "" : ", ended " + Dates.shown(agreed.endedOn())));
    }

    private CarePlan plan(String title, CarePlanStatus status) {
        CarePlan plan = new CarePlan().setStatus(status).setIntent(CarePlanIntent.PLAN).setTitle(title).setSubject(about.patient()).setAuthor(about.clinician());
        plan.addCategory(Codes.words(title));
        return plan;
    }
}
