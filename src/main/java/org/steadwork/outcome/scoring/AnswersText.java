package org.steadwork.outcome.scoring;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** Raw answers in item order as one text, for example {@code 6 _ 3}; an unanswered item is an underscore. */
public final class AnswersText {

    private static final String UNANSWERED = "_";

    private AnswersText() {
    }

    public static String write(List<Integer> answers) {
        return answers.stream().map(answer -> answer == null ? UNANSWERED : answer.toString()).collect(Collectors.joining(" "));
    }

    /** Returns the answers, null for an unanswered item. */
    public static List<Integer> read(String text) {
        return Collections.unmodifiableList(Arrays.stream(text.split(" ")).map(answer -> answer.equals(UNANSWERED) ? null : Integer.valueOf(answer))
                .collect(Collectors.toList()));
    }
}
