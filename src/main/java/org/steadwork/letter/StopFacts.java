package org.steadwork.letter;

import java.util.ArrayList;
import java.util.List;
import org.steadwork.exercise.StopRules;
import org.steadwork.letter.disclosure.InformationCategory;

/** When to stop an exercise and when to get help, as the worker's sheet says it. */
final class StopFacts {

    private static final String BECAUSE = "stop rules of the exercise content";

    private StopFacts() {
    }

    static List<LetterFact> of(StopRules rules) {
        List<LetterFact> facts = new ArrayList<>();
        facts.add(new LetterFact(InformationCategory.EXERCISE_PROGRAMME, "pain_rule", rules.wording()
                + " Pain below your limit that settles by the next morning is fine.", BECAUSE));
        rules.ring().forEach(rule -> facts.add(new LetterFact(InformationCategory.RED_FLAG_RESULT, "stop", "- " + rule, BECAUSE)));
        rules.emergency().forEach(rule -> facts.add(new LetterFact(InformationCategory.RED_FLAG_RESULT, "emergency", "- " + rule, BECAUSE)));
        return facts;
    }
}
