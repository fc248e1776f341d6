package org.steadwork.redflag.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Everything that the content says about red flags.
 *
 * @param regions content keys of the body regions that questions name, without {@code general}
 * @param fullAgainAfter the fact whose "yes" or "unknown" at a review makes the full set due
 * @param regionTokens the suspension tokens that hold for one region only
 */
public record Catalogue(List<String> regions, List<Question> questions, List<Fact> facts, List<Layer> layers,
                        String fullAgainAfter, List<CombinationRule> rules, List<PermanentBar> bars, Set<String> regionTokens,
                        Map<String, Question> questionsByKey) {

    public static final String GENERAL = "general";

    public static Catalogue of(List<Question> questions, List<Fact> facts, List<Layer> layers, String fullAgainAfter,
                               List<CombinationRule> rules, List<PermanentBar> bars, Set<String> regionTokens) {
        Map<String, Question> byKey = new LinkedHashMap<>();
        questions.forEach(question -> byKey.put(question.key(), question));
        List<String> regions = questions.stream().map(Question::region).filter(region -> !region.equals(GENERAL)).distinct().toList();
        return new Catalogue(regions, List.copyOf(questions), List.copyOf(facts), List.copyOf(layers), fullAgainAfter,
                List.copyOf(rules), List.copyOf(bars), Set.copyOf(regionTokens), byKey);
    }

    public Optional<Question> question(String key) {
        return Optional.ofNullable(questionsByKey.get(key));
    }

    public Optional<Fact> fact(String key) {
        return facts.stream().filter(fact -> fact.key().equals(key)).findFirst();
    }

    public Optional<CombinationRule> rule(String id) {
        return rules.stream().filter(rule -> rule.id().equals(id)).findFirst();
    }
}
