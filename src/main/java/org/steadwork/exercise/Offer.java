package org.steadwork.exercise;

import org.steadwork.exercise.dayplan.Dose;
import org.steadwork.exercise.dayplan.DoseWords;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.WorkingDay;

/**
 * An exercise about to be given, with what stands against it.
 *
 * @param heldStretch the slow desk dose with longer holds, or null
 * @param usesHeld    true when that dose is the proposal
 */
record Offer(Exercise exercise, CaseSafety.Verdict verdict, Dose heldStretch, boolean usesHeld, WorkingDay day) {

    public String heldWords() {
        return DoseWords.of(heldStretch, exercise.per());
    }

    public String usualWords() {
        return DoseWords.of(exercise.dose(), exercise.per());
    }
}
