package org.steadwork.redflag.rules;

import java.util.Optional;

/**
 * What a published rule gives.
 *
 * @param count the count or score with its bounds, where the rule counts
 */
public record RuleResult(Outcome outcome, Optional<Range> count) {

    static RuleResult of(Outcome outcome) {
        return new RuleResult(outcome, Optional.empty());
    }

    static RuleResult of(Outcome outcome, Range count) {
        return new RuleResult(outcome, Optional.of(count));
    }
}
