package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CasePart;
import org.steadwork.casefile.CaseTab;

/** Says beside the name of the programme how many of the exercises given are suspended. */
@ApplicationScoped
class ProgrammeMark implements CasePart {

    @Inject
    Prescriptions prescriptions;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    @Any
    Instance<ExerciseHolds> holds;

    @Override
    public Optional<String> mark(CaseTab tab, CaseFile file) {
        if (tab != CaseTab.PROGRAMME) {
            return Optional.empty();
        }
        List<ExerciseHolds.Hold> inForce = holds.stream().flatMap(source -> source.beside(file).stream()).toList();
        if (inForce.isEmpty()) {
            return Optional.empty();
        }
        CaseSafety safety = new CaseSafety(catalogue, inForce, Map.of());
        Set<String> given = prescriptions.given(file.id());
        long held = given.stream().flatMap(key -> catalogue.find(key).stream()).filter(exercise -> safety.of(exercise).held()).count();
        return held == 0 ? Optional.empty() : Optional.of(held + " suspended");
    }
}
