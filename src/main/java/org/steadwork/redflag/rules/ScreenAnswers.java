package org.steadwork.redflag.rules;

import java.util.HashMap;
import java.util.Map;
import org.steadwork.kernel.Answer;

/**
 * The answers of one screen by key; a key without an answer is NOT_ASKED. A key {@code question/tick} names one tick of a
 * composite question: a "no" to the question is a "no" to each tick, and a tick is a "yes" to its question.
 */
public final class ScreenAnswers {

    private final Map<String, Answer> byKey;
    private final Map<String, Answer> ticked;

    private ScreenAnswers(Map<String, Answer> byKey) {
        this.byKey = byKey;
        this.ticked = ticked(byKey);
    }

    public static ScreenAnswers of(Map<String, Answer> byKey) {
        return new ScreenAnswers(Map.copyOf(byKey));
    }

    public Answer of(String key) {
        Answer own = byKey.getOrDefault(key, Answer.NOT_ASKED);
        if (own == Answer.YES) {
            return own;
        }
        int slash = key.indexOf('/');
        return slash < 0 ? withTicks(key, own) : withQuestion(own, byKey.getOrDefault(key.substring(0, slash), Answer.NOT_ASKED));
    }

    private Answer withTicks(String question, Answer own) {
        return ticked.getOrDefault(question, own);
    }

    /** What the ticks of each question say: one yes is a yes; else one unknown is unknown; else they say nothing of their own. */
    private static Map<String, Answer> ticked(Map<String, Answer> byKey) {
        Map<String, Answer> ticked = new HashMap<>();
        byKey.forEach((key, answer) -> {
            int slash = key.indexOf('/');
            if (slash > 0 && (answer == Answer.YES || answer == Answer.UNKNOWN)) {
                ticked.merge(key.substring(0, slash), answer, (one, other) -> one == Answer.YES ? one : other);
            }
        });
        return ticked;
    }

    private static Answer withQuestion(Answer own, Answer question) {
        if (own != Answer.NOT_ASKED) {
            return own;
        }
        return switch (question) {
            case NO -> Answer.NO;
            case UNKNOWN -> Answer.UNKNOWN;
            case YES, NOT_ASKED -> Answer.NOT_ASKED;
        };
    }

    public ScreenAnswers with(String key, Answer answer) {
        Map<String, Answer> more = new HashMap<>(byKey);
        more.put(key, answer);
        return of(more);
    }

    public ScreenAnswers with(Map<String, Answer> others) {
        Map<String, Answer> more = new HashMap<>(byKey);
        more.putAll(others);
        return of(more);
    }
}
