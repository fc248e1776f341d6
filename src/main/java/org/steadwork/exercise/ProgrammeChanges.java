package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.PlanChanges;
import org.steadwork.drawing.PlanMark;

/** Exercises given and ended, one mark a day. */
@ApplicationScoped
class ProgrammeChanges implements PlanChanges {

    private static final int MOST_NAMED = 2;

    @Inject
    Prescriptions prescriptions;

    @Inject
    ExerciseCatalogue catalogue;

    @Override
    public List<PlanMark> of(CaseFile caseFile) {
        Map<LocalDate, List<String>> given = new TreeMap<>();
        Map<LocalDate, List<String>> ended = new TreeMap<>();
        for (Prescription prescription : prescriptions.of(caseFile.id())) {
            String name = catalogue.find(prescription.exerciseKey()).map(exercise -> exercise.name()).orElse(prescription.exerciseKey());
            given.computeIfAbsent(prescription.startedOn(), day -> new ArrayList<>()).add(name);
            if (prescription.endedOn() != null) {
                ended.computeIfAbsent(prescription.endedOn(), day -> new ArrayList<>()).add(name);
            }
        }
        Map<LocalDate, String> days = new TreeMap<>();
        given.forEach((day, names) -> days.put(day, words(names, "given")));
        ended.forEach((day, names) -> days.merge(day, words(names, "ended"), (first, second) -> first + "; " + second));
        return days.entrySet().stream().map(day -> new PlanMark(day.getKey(), PlanMark.Kind.PROGRAMME, day.getValue())).toList();
    }

    private static String words(List<String> names, String what) {
        return (names.size() <= MOST_NAMED ? String.join(", ", names) : names.size() + " exercises") + " " + what;
    }
}
