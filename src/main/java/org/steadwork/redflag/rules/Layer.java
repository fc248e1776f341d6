package org.steadwork.redflag.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steadwork.kernel.Answer;

/**
 * A group of questions that is due together.
 *
 * @param regions content keys of the regions it is for; empty for everyone
 * @param when it is due unless this is "no"; empty for always
 * @param after a question or fact that is asked first; until then the layer waits and that question is due instead
 * @param untilAsked what stays suspended while a question of the layer is not asked, where that differs from its own tokens
 */
public record Layer(String id, String title, Set<Occasion> occasions, Set<String> regions, Optional<Condition> when,
                    Optional<String> after, List<String> keys, Map<String, Set<String>> untilAsked) {

    boolean fits(Occasion occasion, Set<String> reported) {
        return occasions.contains(occasion) && (regions.isEmpty() || regions.stream().anyMatch(reported::contains));
    }

    /** An unknown or unasked condition keeps the layer due. */
    boolean due(ScreenAnswers answers) {
        return !waits(answers) && when.map(condition -> condition.evaluate(answers::of) != Answer.NO).orElse(true);
    }

    boolean waits(ScreenAnswers answers) {
        return after.isPresent() && answers.of(after.get()) == Answer.NOT_ASKED;
    }
}
