package org.steadwork.casemap;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseTab;
import org.steadwork.casefile.MapCard;
import org.steadwork.casefile.MapPart;
import org.steadwork.exercise.AdherenceEntries;
import org.steadwork.exercise.AdherenceEntry;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.HeldExercises;
import org.steadwork.exercise.PrescribedSide;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.Prescriptions;
import org.steadwork.exercise.dayplan.Adherence;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.web.Dates;

/** Lays the exercises a patient has now on the map, with what was last reported of each; one that a red flag holds back says so. */
@ApplicationScoped
class ExerciseCards implements MapPart {

    @Inject
    Prescriptions prescriptions;

    @Inject
    AdherenceEntries entries;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    HeldExercises held;

    @Override
    public List<MapCard> cards(CaseFile caseFile) {
        List<Prescription> current = prescriptions.of(caseFile.id()).stream().filter(Prescription::current).toList();
        if (current.isEmpty()) {
            return List.of();
        }
        Map<Long, List<AdherenceEntry>> reported = entries.ofCase(caseFile.id());
        Predicate<Exercise> suspended = held.of(caseFile.id());
        String href = CaseTab.PROGRAMME.href(caseFile.id());
        return current.stream().map(given -> catalogue.find(given.exerciseKey()).map(exercise -> {
                    MapCard card = card(given, exercise, reported.getOrDefault(given.id(), List.of()), href);
                    return suspended.test(exercise) ? card.in("out", "suspended") : card;
                }))
                .flatMap(Optional::stream).toList();
    }

    private static MapCard card(Prescription given, Exercise exercise, List<AdherenceEntry> reported, String href) {
        String side = given.side() == PrescribedSide.LEFT || given.side() == PrescribedSide.RIGHT
                ? ", " + given.side().label().toLowerCase(Locale.ROOT) : "";
        String line = reported.isEmpty() ? "Since " + Dates.shown(given.startedOn()) + ", nothing reported yet" : kept(reported.get(reported.size() - 1));
        return MapCard.action("prescription-" + given.id(), exercise.name() + side, line, href, false, exercise.regions(), Set.of());
    }

    private static String kept(AdherenceEntry entry) {
        Adherence adherence = entry.adherence();
        String sessions = adherence.done() == null ? "Sessions not known of " + adherence.planned()
                : adherence.done() + " of " + adherence.planned() + " sessions";
        return sessions + ", week to " + Dates.shown(entry.weekTo());
    }
}
