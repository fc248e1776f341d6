package org.steadwork.demo;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Optional;
import org.steadwork.content.Entry;
import org.steadwork.exercise.AdherenceEntries;
import org.steadwork.exercise.AdherenceEntry;
import org.steadwork.exercise.ConditionAnswer;
import org.steadwork.exercise.ConditionAnswers;
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

/** The exercises given at each visit, and what was reported of those given before. */
@ApplicationScoped
class DemoExercises implements DemoVisitPart {

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    Prescriptions prescriptions;

    @Inject
    AdherenceEntries entries;

    @Inject
    ConditionAnswers answers;

    @Override
    public int order() {
        return 40;
    }

    @Override
    public void load(DemoVisit visit) {
        if (visit.visit().number() == 1) {
            visit.described().texts("conditions").forEach(condition -> known(visit, condition, Answer.YES));
        }
        visit.entry().entry("conditions").ifPresent(now -> now.keys().forEach(key -> known(visit, key, now.constant(key, Answer.class))));
        for (Entry kept : visit.entry().entries("adherence")) {
            report(visit, kept, LocalDate.parse(kept.text("to")), new Adherence(kept.integer("done"), kept.integer("planned")),
                    kept.has("pain_during") ? kept.integer("pain_during") : null,
                    kept.has("next_morning") ? kept.constant("next_morning", PainRule.Morning.class) : PainRule.Morning.NOT_ASKED);
        }
        visit.entry().entries("prescriptions").forEach(written -> give(visit, written));
    }

    private void known(DemoVisit visit, String condition, Answer answer) {
        ConditionAnswer stored = answers.of(visit.file().id()).stream().filter(known -> known.condition().equals(condition)).findFirst()
                .orElseGet(() -> new ConditionAnswer(visit.file(), condition));
        stored.answer(answer, visit.clinician().displayName(), visit.moment());
        answers.persist(stored);
    }

    /** An exercise given again gets its new dose. */
    private void give(DemoVisit visit, Entry written) {
        Exercise exercise = catalogue.find(written.text("exercise")).orElseThrow(() -> written.problem("there is no exercise of this key"));
        Prescription given = given(visit, exercise.key()).orElseGet(
                () -> new Prescription(visit.file(), exercise, visit.day(), visit.clinician().displayName(), visit.moment()));
        PrescribedSide side = side(written, exercise);
        boolean counted = written.has("reps") || written.has("minutes");
        Dose dose = new Dose(range(written, "hold_s"), counted ? range(written, "reps") : exercise.dose().repetitions(), side.sides(exercise),
                range(written, "sets"), counted ? range(written, "minutes") : exercise.dose().minutes(), range(written, "times_per_day"),
                range(written, "every_hours"), range(written, "days_per_week"));
        String effort = written.has("load_kg") ? written.text("load_kg") + " kg" : exercise.kind().effort();
        given.dose(dose, side, effort, exercise.kind().painCeiling(), written.optionalText("note").orElse(null));
        prescriptions.persist(given);
    }

    private void report(DemoVisit visit, Entry written, LocalDate weekTo, Adherence adherence, Integer pain, PainRule.Morning morning) {
        Prescription given = given(visit, written.text("exercise")).orElseThrow(() -> written.problem("this exercise was not given before"));
        AdherenceEntry entry = new AdherenceEntry(given, weekTo);
        entry.report(adherence, pain, morning, visit.clinician().displayName());
        entries.persist(entry);
    }

    private Optional<Prescription> given(DemoVisit visit, String key) {
        return prescriptions.of(visit.file().id()).stream().filter(p -> p.current() && p.exerciseKey().equals(key)).findFirst();
    }

    /** Both sides at once are no side: only an exercise done side by side counts each. */
    private static PrescribedSide side(Entry written, Exercise exercise) {
        return switch (written.optionalText("side").orElse("both")) {
            case "left" -> PrescribedSide.LEFT;
            case "right" -> PrescribedSide.RIGHT;
            case "both" -> PrescribedSide.usual(exercise);
            default -> throw written.problem("'side' is left, right or both");
        };
    }

    private static Range range(Entry written, String key) {
        return written.optionalText(key).map(Range::parse).orElse(null);
    }
}
