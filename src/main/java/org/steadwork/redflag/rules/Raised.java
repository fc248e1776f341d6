package org.steadwork.redflag.rules;

import java.util.Set;

/**
 * A question or a rule that a screen raises.
 *
 * @param origin key of the question or id of the rule
 * @param suspends tokens; one that holds for a region carries it, for example {@code region_all:knee}
 * @param certain false where it rests on an "unknown", which is acted on as a "yes"
 * @param because keys of the answers it rests on
 */
public record Raised(String origin, String name, Urgency urgency, String pointsTo, String action, Set<String> suspends,
                     boolean certain, Set<String> because, String source) {
}
