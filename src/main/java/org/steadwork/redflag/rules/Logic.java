package org.steadwork.redflag.rules;

import java.util.Collection;
import java.util.List;
import org.steadwork.kernel.Answer;

/** Three-valued logic over answers; a result is YES, NO or, where an open answer could still change it, UNKNOWN. */
final class Logic {

    private Logic() {
    }

    static Answer anyOf(Collection<Answer> answers) {
        return atLeast(1, answers);
    }

    static Answer anyOf(Answer... answers) {
        return anyOf(List.of(answers));
    }

    /** Compares the lowest and the highest possible number of yes answers with the threshold. */
    static Answer atLeast(int threshold, Collection<Answer> answers) {
        return Range.of(answers).atLeast(threshold);
    }

    static Answer allOf(Answer... answers) {
        return allOf(List.of(answers));
    }

    static Answer allOf(Collection<Answer> answers) {
        return atLeast(answers.size(), answers);
    }
}
