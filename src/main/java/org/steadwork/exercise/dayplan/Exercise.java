package org.steadwork.exercise.dayplan;

import java.util.List;
import java.util.Set;
import org.steadwork.body.BodyRegion;

/**
 * An exercise of the catalogue.
 *
 * @param key         stable name
 * @param kind        key, label and defaults of its type
 * @param regions     regions it is for, at least one
 * @param steps       what to do, in order; the text alternative of the figure
 * @param dose        the usual dose; at home and at the desk may both be given
 * @param per         what the sides of the dose are called ("side", "way"); empty when there is one
 * @param tempo       seconds of a repetition besides the hold, at least 0
 * @param doseNote    what the numbers do not say; may be empty
 * @param stopRules   stop rules of its own, besides the global ones
 * @param precautions conditions that bar it or ask for thought
 * @param desk        true when it can be done at the desk
 * @param source      where it comes from, with the tag of the evidence
 */
public record Exercise(String key, String name, Kind kind, Set<BodyRegion> regions, String purpose, String position, List<String> steps, Dose dose,
        String per, double tempo, String doseNote, String progression, String regression, List<String> stopRules, List<Precaution> precautions,
        boolean desk, String source) {

    /**
     * A kind of exercise.
     *
     * @param effort      load, effort or feeling that belongs on the sheet
     * @param painCeiling highest pain during the exercise, 0-10, unless the clinician sets another
     */
    public record Kind(String key, String label, String effort, int painCeiling) {
    }

    public Exercise {
        if (regions.isEmpty() || steps.isEmpty() || source.isBlank()) {
            throw new IllegalArgumentException("Exercise " + key + " needs regions, steps and a source");
        }
        if (!(tempo >= 0 && tempo <= 60)) {
            throw new IllegalArgumentException("The tempo of exercise " + key + " is 0 to 60 s, but was " + tempo);
        }
        regions = Set.copyOf(regions);
        steps = List.copyOf(steps);
        stopRules = List.copyOf(stopRules);
        precautions = List.copyOf(precautions);
    }
}
