package org.steadwork.redflag.rules;

import java.util.OptionalInt;

/**
 * Something besides the questions that decides which are due, or that a combination rule needs; asked with the same four answers.
 *
 * @param ageAtLeast completed years from which it is true, where it is read from the date of birth; empty where it is asked
 */
public record Fact(String key, String prompt, OptionalInt ageAtLeast) {
}
