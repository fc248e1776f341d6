package org.steadwork.redflag.rules;

import java.util.Set;

/** A suspension that stays in force after the flag is closed; {@code after} names the questions and rules that bring it. */
public record PermanentBar(String token, Set<String> after, String words) {
}
