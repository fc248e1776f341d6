package org.steadwork.bench;

/**
 * What is wrong with one value.
 *
 * @param field its path: {@code reach}, {@code lifts[1].reach}, {@code items[3]}; empty for the whole
 * @param reason a sentence for the person who entered it
 * @param given what was given, shortened; empty when nothing was
 * @param allowed what may be given
 */
public record FieldProblem(String field, String reason, String given, String allowed) {
}
