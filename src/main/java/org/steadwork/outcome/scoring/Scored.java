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
 */
public record Scored(OptionalDouble value, OptionalDouble low, OptionalDouble high, Map<String, Double> parts,
        List<Integer> missing, boolean estimated, String working) {

    public Scored {
        parts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        missing = List.copyOf(missing);
    }

    static Scored of(double value, ItemAnswers answers, String working) {
        return of(value, Map.of(), answers, working);
    }

    static Scored of(double value, Map<String, Double> parts, ItemAnswers answers, String working) {
        OptionalDouble known = OptionalDouble.of(value);
        return new Scored(known, known, known, parts, answers.missing(), !answers.complete(), working);
    }

    static Scored none(ItemAnswers answers, String reason) {
        return new Scored(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Map.of(), answers.missing(),
                false, reason);
    }

    static Scored between(double low, double high, ItemAnswers answers, String working) {
        return new Scored(OptionalDouble.empty(), OptionalDouble.of(low), OptionalDouble.of(high), Map.of(), answers.missing(),
                false, working);
    }
}
