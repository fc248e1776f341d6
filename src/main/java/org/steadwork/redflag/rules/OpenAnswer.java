package org.steadwork.redflag.rules;

import org.steadwork.kernel.Answer;

/**
 * An unanswered question, fact or published rule that could change what the screen says.
 *
 * @param key as in the content; {@code rule:ID} for a published rule
 * @param could the level that a "yes" could bring; for a fact that only decides what is asked, the level to watch
 * @param due true when it belongs to the set that is due, false when a rule asks for it
 */
public record OpenAnswer(String key, Answer answer, Urgency could, boolean due) {
}
