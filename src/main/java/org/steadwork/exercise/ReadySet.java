package org.steadwork.exercise;

import java.util.List;
import org.steadwork.exercise.dayplan.Exercise;

/** Exercises that are often given together, as a start that the clinician edits. */
public record ReadySet(String key, String name, List<Exercise> now, List<Exercise> later, String note) {
}
