package org.steadwork.meeting.agenda;

import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * One criterion by which a case comes before the review meeting.
 *
 * @param rule    how it is judged
 * @param words   what it says in a line, e.g. "No meaningful change in time"
 * @param explained how it is judged, in a sentence or two, for whoever opens a reason
 * @param numbers its numbers by name, all that {@link Rule#numbers()} asks for, each 0 or more; settings of the clinic
 * @param keys    keys of other content it looks at, as the rule asks; may be empty
 * @param tag     how sure the source is: S seen, M from memory, CP common practice, P a proposal of ours
 */
public record Criterion(Rule rule, String words, String explained, Map<String, Integer> numbers, Set<String> keys, String source, String tag) {

    public Criterion {
        Objects.requireNonNull(rule, "rule");
        numbers = Map.copyOf(numbers);
        keys = Set.copyOf(keys);
        if (!numbers.keySet().equals(rule.numbers())) {
            throw new IllegalArgumentException(rule.key() + " needs the numbers " + rule.numbers() + ", but has " + numbers.keySet());
        }
        if (numbers.values().stream().anyMatch(number -> number < 0)) {
            throw new IllegalArgumentException("The numbers of " + rule.key() + " are 0 or more, but are " + numbers);
        }
    }

    int number(String name) {
        return numbers.get(name);
    }

    Reason holds(String reason, Figure... figures) {
        return new Reason(this, true, reason, java.util.List.of(figures));
    }

    Reason holds(String reason, java.util.List<Figure> figures) {
        return new Reason(this, true, reason, figures);
    }

    Reason unknown(String reason) {
        return new Reason(this, false, reason, java.util.List.of());
    }
}
