package org.steadwork.caseload.statistics;

import java.util.Optional;

/**
 * How many responded to treatment, and how much of that rests on those who were not seen again.
 *
 * @param started all who started, at least 1
 * @param followedUp those of them with a follow-up, in [0, started]
 * @param responders those of them who responded by the definition in use, in [0, followedUp]; outside {@link IllegalArgumentException}
 */
public record Responders(int started, int followedUp, int responders) {

    public Responders {
        if (started < 1 || followedUp < 0 || followedUp > started || responders < 0 || responders > followedUp) {
            throw new IllegalArgumentException("Responders must be among those followed up, and these among those who started, but were "
                    + responders + ", " + followedUp + " and " + started);
        }
    }

    /** Returns the share that has a follow-up: what the other shares are worth. */
    public Proportion completion() {
        return new Proportion(followedUp, started);
    }

    /** Returns the share of those followed up: too bright when the ones who did badly stay away. Empty when nobody was followed up. */
    public Optional<Proportion> amongFollowedUp() {
        return followedUp == 0 ? Optional.empty() : Optional.of(new Proportion(responders, followedUp));
    }

    /** Returns the share of all who started, everyone lost counted as not having responded: the least it can be. */
    public Proportion lostAsFailures() {
        return new Proportion(responders, started);
    }
}
