package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import org.steadwork.content.Entry;
import org.steadwork.exercise.AdherenceEntry;
import org.steadwork.exercise.ConditionAnswer;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.PrescribedSide;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.Prescriptions;
import org.steadwork.exercise.dayplan.Adherence;
import org.steadwork.exercise.dayplan.Dose;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.PainRule;
import org.steadwork.exercise.dayplan.Range;
import org.steadwork.kernel.Answer;

/** The home programme of each visit: conditions that bar exercises, exercises given or changed, what was done of them. */
@ApplicationScoped
class DemoProgramme implements DemoVisitPart {

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    Prescriptions prescriptions;

    @Inject
    EntityManager db;

    @Override
    public int order() {
        return 40;
    }

    @Override
    public void load(DemoVisit visit) {
        if (visit.visit().number() == 1) {
            for (String condition : visit.described().texts("conditions")) {
                ConditionAnswer known = new ConditionAnswer(visit.file(), condition);
                known.answer(Answer.YES, visit.clinician().displayName(), visit.moment());
                db.persist(known);
            }
        }
        visit.entry().entries("adherence").forEach(reported -> adherence(visit, reported));
        visit.entry().entries("prescriptions").forEach(given -> prescribe(visit, given));
    }

    private void prescribe(DemoVisit visit, Entry given) {
        Exercise exercise = catalogue.find(given.text("exercise")).orElseThrow(() -> given.problem("no such exercise"));
        Prescription prescription = current(visit, exercise.key());
        if (prescription == null) {
            prescription = new Prescription(visit.file(), exercise, visit.day(), visit.clinician().displayName(), visit.moment());
        }
        String written = given.optionalText("side").orElse("both");
        // both sides at once are no side: only an exercise that is done side by side counts each
        PrescribedSide side = written.equals("both") ? PrescribedSide.usual(exercise) : given.constant("side", PrescribedSide.class);
        Dose dose = new Dose(range(given, "hold_s"), range(given, "reps"), side.sides(exercise), range(given, "sets"),
                range(given, "minutes"), range(given, "times_per_day"), range(given, "every_hours"), range(given, "days_per_week"));
        String effort = given.optionalText("load_kg").map(kilograms -> kilograms + " kg").orElse(exercise.kind().effort());
        prescription.dose(dose, side, effort, exercise.kind().painCeiling(), given.optionalText("note").orElse(null));
        prescriptions.persist(prescription);
    }

    private void adherence(DemoVisit visit, Entry reported) {
        Prescription prescription = current(visit, reported.text("exercise"));
        if (prescription == null) {
            throw reported.problem("'" + reported.text("exercise") + "' was not given before");
        }
        AdherenceEntry entry = new AdherenceEntry(prescription, LocalDate.parse(reported.text("to")));
        Integer pain = reported.has("pain_during") ? reported.integer("pain_during") : null;
        PainRule.Morning morning = reported.has("next_morning") ? reported.constant("next_morning", PainRule.Morning.class)
                : PainRule.Morning.NOT_ASKED;
        entry.report(new Adherence(reported.integer("done"), reported.integer("planned")), pain, morning, visit.clinician().displayName());
        db.persist(entry);
    }

    private Prescription current(DemoVisit visit, String key) {
        return prescriptions.of(visit.file().id()).stream().filter(p -> p.current() && p.exerciseKey().equals(key)).findFirst().orElse(null);
    }

    private static Range range(Entry given, String key) {
        return given.optionalText(key).map(Range::parse).orElse(null);
    }
}
