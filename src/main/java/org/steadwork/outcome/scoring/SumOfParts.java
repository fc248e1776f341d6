package org.steadwork.outcome.scoring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The weighted sum of parts, where a missing item takes the mean of the answered items of its own part; not rounded.
 *
 * <p>A part with more missing items than it may miss gives no score. The filled score is marked as estimated.
 * Source: MacDermid, user manual of the tennis elbow evaluation, 2007 and 2010 (rule for missing items from memory).
 */
public record SumOfParts(List<Part> parts) implements ScoringRule {

    public SumOfParts {
        parts = List.copyOf(parts);
    }

    @Override
    public Scored score(ItemAnswers answers) {
        Map<String, Double> values = new LinkedHashMap<>();
        List<String> working = new ArrayList<>();
        for (Part part : parts) {
            ItemAnswers own = answers.part(part.first(), part.last());
            int size = own.items().size();
            if (own.answered() == 0 || own.missing().size() > part.mayMiss()) {
                return Scored.none(answers, "No score: " + own.answered() + " of " + size + " items answered in the part "
                        + part.name() + ", " + (size - part.mayMiss()) + " needed");
            }
            double value = part.weight() * own.sum() / own.answered() * size;
            values.put(part.name(), value);
            working.add(part.name() + " " + Plain.number(value));
        }
        double total = values.values().stream().mapToDouble(Double::doubleValue).sum();
        return Scored.of(total, values, answers, String.join(" + ", working) + " = " + Plain.number(total));
    }

    @Override
    public String words() {
        List<String> words = new ArrayList<>();
        for (Part part : parts) {
            words.add("sum of " + part.name() + (part.weight() == 1 ? "" : " × " + Plain.number(part.weight()))
                    + " (at most " + part.mayMiss() + " missing)");
        }
        return String.join(" + ", words) + "; a missing item takes the mean of its part";
    }
}
