package org.steadwork.redflag.rules;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A rule over several answers that can raise the level of a screen and never lowers one.
 *
 * @param levels from the highest to the lowest; the first that holds is the rule's level; one without urgency only advises
 * @param givesWayTo rules beside which this one need not be shown
 */
public record CombinationRule(String id, String name, List<Level> levels, String pointsTo, String action, Set<String> suspends,
                              String basis, String tag, Set<String> givesWayTo) {

    public CombinationRule {
        levels = List.copyOf(levels);
        suspends = Set.copyOf(suspends);
        givesWayTo = Set.copyOf(givesWayTo);
    }

    /** What the rule asks for when the condition holds; without an urgency it is advice alone. */
    public record Level(Optional<Urgency> urgency, Condition when) {
    }

    /** Returns every key that the rule looks at. */
    public Set<String> keys() {
        Set<String> keys = new LinkedHashSet<>();
        levels.forEach(level -> keys.addAll(level.when().keys()));
        return keys;
    }
}
