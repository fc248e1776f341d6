package org.steadwork.letter;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.Prescriptions;
import org.steadwork.exercise.dayplan.DoseWords;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.web.Dates;

/** The exercises that are given now, with their dose. */
@ApplicationScoped
class ExerciseFacts implements LetterFacts {

    @Inject
    Prescriptions prescriptions;

    @Inject
    ExerciseCatalogue catalogue;

    private static String sentence(String step) {
        return step.matches(".*[.!?]") ? step : step + ".";
    }

    @Override
    public List<LetterFact> of(CaseFile file) {
        List<LetterFact> facts = new ArrayList<>(StopFacts.of(catalogue.stopRules()));
        prescriptions.of(file.id()).stream().filter(Prescription::current)
                .flatMap(given -> catalogue.find(given.exerciseKey()).stream().map(exercise -> new LetterFact(InformationCategory.EXERCISE_PROGRAMME,
                        "programme", "- " + exercise.name() + ": " + DoseWords.of(given.dose(), exercise.per().isEmpty() ? "side" : exercise.per())
                        + ", since " + Dates.inLetter(given.startedOn()) + ".", "programme"))).forEach(facts::add);
        prescriptions.of(file.id()).stream().filter(Prescription::current).flatMap(given -> catalogue.find(given.exerciseKey()).stream()
                .map(exercise -> new LetterFact(InformationCategory.EXERCISE_PROGRAMME, "exercises", exercise.name() + ": "
                        + DoseWords.of(given.dose(), exercise.per().isEmpty() ? "side" : exercise.per()) + ". " + exercise.steps().stream().map(ExerciseFacts::sentence).collect(Collectors.joining(" ")),
                        "programme"))).forEach(facts::add);
        return facts;
    }
}
