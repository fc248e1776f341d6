package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.util.List;
import java.util.stream.Collectors;

/** Gathers what stands against exercises in a case. */
@ApplicationScoped
class CaseSafeties {

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    ConditionAnswers answers;

    @Inject
    @Any
    Instance<ExerciseHolds> holds;

    CaseSafety of(long caseId) {
        List<ExerciseHolds.Hold> inForce = holds.stream().flatMap(h -> h.inForce(caseId).stream()).toList();
        return new CaseSafety(catalogue, inForce, answers.of(caseId).stream().collect(Collectors.toMap(ConditionAnswer::condition, ConditionAnswer::answer)));
    }
}
