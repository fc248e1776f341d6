package org.steadwork.redflag.rules;

import java.util.List;
import java.util.Set;

/**
 * One red-flag question with what a "yes" may point to and asks for.
 *
 * @param region content key of the body region, or {@code general}
 * @param name what a "yes" says, in a few words, for example "clumsy hands"
 * @param suspends suspension tokens, empty for none
 * @param ticks the parts of a composite question, empty for others
 */
public record Question(String region, String key, String name, String prompt, String pointsTo, Urgency urgency, String action,
                       Set<String> suspends, String source, List<Tick> ticks) {

    public Question {
        suspends = Set.copyOf(suspends);
        ticks = List.copyOf(ticks);
    }

    /** One part of a composite question; its answer key is {@code question/key}. */
    public record Tick(String key, String words) {
    }
}
