package org.steadwork.outcome.scoring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Each part as a percentage of its most, then the mean of the parts, in [0, 100], not rounded.
 *
 * <p>A missing or not applicable item leaves both the sum and the most of its part; with more than {@code mayMiss} missing in
 * all, or a part without any answer, there is no score. Pooling all items instead gives other figures and is not done.
 * Source: Roach et al. 1991; Breckenridge and McAuley 2011.
 */
public record MeanOfParts(List<Part> parts, int mayMiss) implements ScoringRule {

    public MeanOfParts {
        parts = List.copyOf(parts);
    }

    @Override
    public Scored score(ItemAnswers answers) {
        if (answers.missing().size() > mayMiss) {
            return Scored.none(answers, TooFew.words(answers, answers.items().size() - mayMiss));
        }
        Map<String, Double> values = new LinkedHashMap<>();
        List<String> working = new ArrayList<>();
        for (Part part : parts) {
            ItemAnswers own = answers.part(part.first(), part.last());
            if (own.answered() == 0) {
                return Scored.none(answers, "No score: nothing answered in the part " + part.name());
            }
            double value = 100.0 * own.sum() / own.highestSum();
            values.put(part.name(), value);
            working.add(part.name() + " 100 × " + own.sum() + " ÷ " + own.highestSum() + " = " + Plain.number(value));
        }
        double mean = values.values().stream().mapToDouble(Double::doubleValue).sum() / parts.size();
        return Scored.of(mean, values, answers, String.join("; ", working) + "; mean = " + Plain.number(mean));
    }

    @Override
    public String words() {
        return "each part as a percentage of the most it can reach, then the mean of the parts; at most " + mayMiss + " items missing";
    }
}
