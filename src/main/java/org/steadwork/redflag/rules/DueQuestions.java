package org.steadwork.redflag.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.steadwork.kernel.Answer;
import org.steadwork.redflag.rules.ScreenResult.DueKey;

/** Finds which questions are due on an occasion, and which facts decide it. */
final class DueQuestions {

    private final Catalogue catalogue;
    private final List<Layer> fitting;
    private final ScreenAnswers answers;

    /** @param newRegions those of {@code regions} that no earlier screen asked about: everything of theirs is due, at a review too */
    DueQuestions(Catalogue catalogue, Occasion occasion, Set<String> regions, Set<String> newRegions, ScreenAnswers answers) {
        this.catalogue = catalogue;
        this.answers = answers;
        boolean fullAgain = occasion == Occasion.REVIEW && Set.of(Answer.YES, Answer.UNKNOWN).contains(answers.of(catalogue.fullAgainAfter()));
        this.fitting = catalogue.layers().stream()
                .filter(layer -> layer.fits(occasion, regions) || fullAgain && layer.fits(Occasion.FULL, regions)
                        || !layer.regions().isEmpty() && layer.fits(Occasion.FULL, newRegions)).toList();
    }

    /** Returns the due keys in the order of the layers, each once, then those left open by earlier screens. */
    List<DueKey> keys(Set<String> leftOpen) {
        Map<String, DueKey> due = new LinkedHashMap<>();
        for (Layer layer : fitting) {
            if (layer.waits(answers)) {
                String first = layer.after().orElseThrow();
                due.putIfAbsent(first, new DueKey(first, layer.title()));
            } else if (layer.due(answers)) {
                layer.keys().forEach(key -> due.putIfAbsent(key, new DueKey(key, layer.title())));
            }
        }
        leftOpen.forEach(key -> due.putIfAbsent(key, new DueKey(key, "Left open earlier")));
        return new ArrayList<>(due.values());
    }

    /** Returns the facts that the conditions of the fitting layers look at. */
    List<String> facts() {
        Set<String> facts = new LinkedHashSet<>();
        for (Layer layer : fitting) {
            layer.when().ifPresent(condition -> condition.keys().stream()
                    .filter(key -> catalogue.fact(key).isPresent()).forEach(facts::add));
        }
        return List.copyOf(facts);
    }

    /** Returns the tokens that stay suspended while a due question is not asked. */
    Set<String> untilAsked(Question question) {
        Set<String> tokens = null;
        for (Layer layer : fitting) {
            Set<String> less = layer.untilAsked().get(question.key());
            tokens = less == null ? tokens : less;
        }
        return tokens == null ? question.suspends() : tokens;
    }
}
