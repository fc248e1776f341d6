package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.HeldExercises;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.Prescriptions;
import org.steadwork.exercise.dayplan.DoseWords;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/** The exercises that are given now, with their dose. */
@ApplicationScoped
class ExerciseFacts implements LetterFacts {

    @Inject
    Prescriptions prescriptions;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    HeldExercises held;

    /** What a red flag holds back is named as paused to a colleague, and not told to the patient as something to do. */
    private static void add(List<LetterFact> facts, Prescription given, Exercise exercise, boolean paused) {
        String dose = DoseWords.of(given.dose(), exercise.per().isEmpty() ? "side" : exercise.per());
        facts.add(new LetterFact(InformationCategory.EXERCISE_PROGRAMME, "programme", "- " + exercise.name() + ": "
                + (paused ? "paused for now" : dose + ", since " + Dates.inLetter(given.startedOn())) + ".", "programme"));
        if (!paused) {
            facts.add(new LetterFact(InformationCategory.EXERCISE_PROGRAMME, "exercises", exercise.name() + ": " + dose + ". "
                    + exercise.steps().stream().map(ExerciseFacts::sentence).collect(Collectors.joining(" ")), "programme"));
        }
    }

    private static String sentence(String step) {
        return step.matches(".*[.!?]") ? step : step + ".";
    }

    @Override
    public List<LetterFact> of(CaseFile file) {
        List<LetterFact> facts = new ArrayList<>(StopFacts.of(catalogue.stopRules()));
        Predicate<Exercise> paused = held.of(file.id());
        for (Prescription given : prescriptions.of(file.id())) {
            if (given.current()) {
                catalogue.find(given.exerciseKey()).ifPresent(exercise -> add(facts, given, exercise, paused.test(exercise)));
            }
        }
        return facts;
    }
}
