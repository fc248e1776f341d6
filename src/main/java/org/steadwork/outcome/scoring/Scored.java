package org.steadwork.outcome.scoring;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What came of scoring: a value, or bounds, or neither with the reason, and the working in words.
 *
 * @param value the score in the unit of the instrument, full precision; empty when too little was answered
 * @param low the lowest value that the missing items allow; equal to the value when that is there, empty when not computed
 * @param high the highest such value
 * @param parts the scores of the parts by name, where an instrument has parts
 * @param missing the numbers of the items without an answer
 * @param estimated true when missing items were filled in by the rule: such a score is marked wherever it is shown
 * @param working the arithmetic, with its numbers
 * @param groups for a rule that puts people in groups, every group the answers allow: one is a classification, more leave it open
 */
public record Scored(OptionalDouble value, OptionalDouble low, OptionalDouble high, Map<String, Double> parts,
        List<Integer> missing, boolean estimated, String working, List<String> groups) {

    public Scored {
        parts = parts.isEmpty() ? Map.of() : java.util.Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        missing = List.copyOf(missing);
        groups = List.copyOf(groups);
    }

    static Scored of(double value, ItemAnswers answers, String working) {
        return of(value, Map.of(), answers, working);
    }

    static Scored of(double value, Map<String, Double> parts, ItemAnswers answers, String working) {
        OptionalDouble known = OptionalDouble.of(value);
        return new Scored(known, known, known, parts, answers.missing(), !answers.complete(), working, List.of());
    }

    static Scored none(ItemAnswers answers, String reason) {
        return new Scored(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Map.of(), answers.missing(),
                false, reason, List.of());
    }

    static Scored between(double low, double high, ItemAnswers answers, String working) {
        return new Scored(OptionalDouble.empty(), OptionalDouble.of(low), OptionalDouble.of(high), Map.of(), answers.missing(),
                false, working, List.of());
    }

    static Scored counted(Map<String, Double> counts, ItemAnswers answers, String working) {
        return new Scored(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), counts, answers.missing(), false, working,
                List.of());
    }

    /** Returns the same with the groups that the answers allow. */
    Scored grouped(List<String> possible) {
        return new Scored(value, low, high, parts, missing, estimated, working, possible);
    }

    /** Returns the same, not marked as estimated: for a scale whose open items are not missing. */
    Scored asNamed() {
        return new Scored(value, low, high, parts, List.of(), false, working, groups);
    }
}
