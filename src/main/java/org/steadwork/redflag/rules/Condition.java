package org.steadwork.redflag.rules;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.steadwork.kernel.Answer;

/**
 * A condition over answers, in three-valued logic. There is no "not": more yes answers can only make a condition truer, so
 * no answer added to a screen lowers its level.
 */
public sealed interface Condition {

    /** Returns YES or NO, or UNKNOWN where an open answer could still change it. */
    Answer evaluate(Function<String, Answer> answers);

    /** Returns every key that the condition looks at. */
    Set<String> keys();

    /** Returns the keys with an open answer in those parts that are not settled yet. */
    default Set<String> unsettled(Function<String, Answer> answers) {
        Set<String> keys = new LinkedHashSet<>();
        if (evaluate(answers).open()) {
            for (Condition part : parts()) {
                keys.addAll(part.unsettled(answers));
            }
        }
        return keys;
    }

    List<Condition> parts();

    /** The answer to one key. */
    record Key(String key) implements Condition {

        @Override
        public Answer evaluate(Function<String, Answer> answers) {
            return answers.apply(key);
        }

        @Override
        public Set<String> keys() {
            return Set.of(key);
        }

        @Override
        public Set<String> unsettled(Function<String, Answer> answers) {
            return evaluate(answers).open() ? Set.of(key) : Set.of();
        }

        @Override
        public List<Condition> parts() {
            return List.of();
        }
    }

    /** All parts hold. */
    record AllOf(List<Condition> parts) implements Condition {

        public AllOf {
            parts = filled(parts);
        }

        @Override
        public Answer evaluate(Function<String, Answer> answers) {
            return Logic.allOf(parts.stream().map(part -> part.evaluate(answers)).toList());
        }

        @Override
        public Set<String> keys() {
            return keysOf(parts);
        }
    }

    /** At least so many parts hold; what stands in {@code twice} counts two. */
    record CountOf(int atLeast, List<Condition> once, List<Condition> twice) implements Condition {

        public CountOf {
            once = List.copyOf(once);
            twice = List.copyOf(twice);
            if (atLeast < 1 || atLeast > once.size() + 2 * twice.size()) {
                throw new IllegalArgumentException("A count of " + atLeast + " cannot be reached by "
                        + once.size() + " parts that count one and " + twice.size() + " that count two");
            }
        }

        @Override
        public Answer evaluate(Function<String, Answer> answers) {
            Range count = new Range(0, 0);
            for (Condition part : once) {
                count = count.plus(Range.points(part.evaluate(answers), 1));
            }
            for (Condition part : twice) {
                count = count.plus(Range.points(part.evaluate(answers), 2));
            }
            return count.atLeast(atLeast);
        }

        @Override
        public Set<String> keys() {
            return keysOf(parts());
        }

        @Override
        public List<Condition> parts() {
            List<Condition> all = new ArrayList<>(once);
            all.addAll(twice);
            return all;
        }
    }

    static Condition anyOf(List<Condition> parts) {
        return new CountOf(1, parts, List.of());
    }

    private static List<Condition> filled(List<Condition> parts) {
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("A condition needs at least one part");
        }
        return List.copyOf(parts);
    }

    private static Set<String> keysOf(List<Condition> parts) {
        Set<String> keys = new LinkedHashSet<>();
        parts.forEach(part -> keys.addAll(part.keys()));
        return keys;
    }
}
