package org.steadwork.exercise;

/**
 * A condition that may bar an exercise or ask for thought.
 *
 * @param question what is asked, in plain words
 * @param screen   true where the red-flag screen asks about the same; its answer does not fill this one in
 */
public record Condition(String key, String label, String question, boolean screen) {
}
