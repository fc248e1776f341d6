package org.steadwork.exercise;

import java.util.List;
import org.steadwork.kernel.Answer;

/** A condition with what is known of it in one case. {@code given} is null when it was not asked. */
record ConditionRow(Condition condition, ConditionAnswer given, List<String> exercises) {

    public Answer answer() {
        return given == null ? Answer.NOT_ASKED : given.answer();
    }

    /** The exercises it matters to, in words. */
    public String matters() {
        return exercises.size() <= 3 ? String.join(", ", exercises) : exercises.get(0) + ", " + exercises.get(1) + " and " + (exercises.size() - 2) + " more";
    }
}
