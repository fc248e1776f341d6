package org.steadwork.outcome.scoring;

/** How the answers of an instrument become its score, with the instrument's own rule for missing items. */
public sealed interface ScoringRule permits SumPercent, ScaledMean, SumOfItems, MeanOfParts, SumOfParts, RiskGroups, RegionCounts {

    /** Scores the answers; too few answers give no value, with the reason, never a guess. */
    Scored score(ItemAnswers answers);

    /** False for a survey that only counts. */
    default boolean hasTotal() {
        return true;
    }

    /** Says the rule in words, for the working. */
    String words();
}
