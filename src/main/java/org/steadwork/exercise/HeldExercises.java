package org.steadwork.exercise;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.function.Predicate;
import org.steadwork.exercise.dayplan.Exercise;

/** Tells which exercises are suspended in a case, for pages of other features that show them. */
@ApplicationScoped
public class HeldExercises {

    @Inject
    CaseSafeties safeties;

    /** Returns what says of an exercise whether it is suspended in this case until a clinician deals with what holds it back. */
    public Predicate<Exercise> of(long caseId) {
        CaseSafety safety = safeties.of(caseId);
        return exercise -> safety.of(exercise).held();
    }
}
