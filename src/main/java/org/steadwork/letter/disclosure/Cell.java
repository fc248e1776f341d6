package org.steadwork.letter.disclosure;

import java.util.Objects;

/**
 * One cell of the disclosure matrix.
 *
 * @param rule  allowed, explicit or never
 * @param limit words that narrow it, such as "claimed region only"; empty when nothing narrows it. The program cannot
 *              judge a limit, so it is shown to the clinician beside the text.
 */
public record Cell(Rule rule, String limit) {
    public Cell {
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(limit, "limit");
    }
}
