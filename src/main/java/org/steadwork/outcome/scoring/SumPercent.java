package org.steadwork.outcome.scoring;

/**
 * The sum of the answered items as a percentage of the most they could have reached: an unanswered item leaves both sums.
 *
 * <p>For items from 0 to 5 this is 100 × sum ÷ (5 × answered), in [0, 100], not rounded; replacing each missing item by the
 * mean of the others gives the same. Fewer than {@code minimumAnswered} answers give no score.
 * Source: Vernon and Mior 1991 with the author's note on missing sections; Fairbank and Pynsent 2000.
 */
public record SumPercent(int minimumAnswered) implements ScoringRule {

    @Override
    public Scored score(ItemAnswers answers) {
        if (answers.answered() < Math.max(1, minimumAnswered)) {
            return Scored.none(answers, TooFew.words(answers, minimumAnswered));
        }
        double value = 100.0 * answers.sum() / answers.highestSum();
        return Scored.of(value, answers, "100 × " + answers.sum() + " ÷ " + answers.highestSum() + " = " + Plain.number(value));
    }

    @Override
    public String words() {
        return "100 × sum ÷ the most that the answered items can reach; at least " + minimumAnswered + " items answered";
    }
}
