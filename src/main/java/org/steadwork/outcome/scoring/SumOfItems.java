package org.steadwork.outcome.scoring;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The sum of the items, some of them turned round (highest − answer + lowest), with one of two rules for missing items.
 *
 * <p>{@link Missing#PRORATE} scales the sum of the answered items up to all items once {@code minimumAnswered} are answered
 * and marks the score as estimated; it is meant for items that begin at 0. {@link Missing#BOUND} never fills in: it gives the
 * lowest and highest sum that the missing items allow. The score is in the points of the items, not rounded.
 * Source: Binkley et al. 1999; Roland and Morris 1983 with Kent and Lauridsen on missing items; Linton et al. 2011.
 */
public record SumOfItems(Set<Integer> reversed, int minimumAnswered, Missing missing) implements ScoringRule {

    /** What happens when items are not answered. */
    public enum Missing { PRORATE, BOUND }

    public SumOfItems {
        reversed = Set.copyOf(reversed);
    }

    @Override
    public Scored score(ItemAnswers answers) {
        List<Integer> turned = new ArrayList<>();
        int lowest = 0;
        int highest = 0;
        for (int i = 0; i < answers.items().size(); i++) {
            Item item = answers.items().get(i);
            Integer raw = answers.values().get(i);
            Integer value = raw == null || !reversed.contains(item.number()) ? raw : Integer.valueOf(item.max() + item.min() - raw);
            turned.add(value);
            lowest += value == null ? item.min() : value;
            highest += value == null ? item.max() : value;
        }
        ItemAnswers recoded = ItemAnswers.of(answers.items(), turned);
        if (answers.complete()) {
            return Scored.of(lowest, answers, "Sum of " + answers.items().size() + " items = " + lowest);
        }
        if (missing == Missing.BOUND && answers.answered() > 0) {
            return Scored.between(lowest, highest, answers,
                    "Between " + lowest + " and " + highest + ", whatever the missing answers are");
        }
        if (answers.answered() < Math.max(1, minimumAnswered)) {
            return Scored.none(answers, TooFew.words(answers, minimumAnswered));
        }
        int most = answers.items().stream().mapToInt(Item::max).sum();
        double value = (double) most * recoded.sum() / recoded.highestSum();
        return Scored.of(value, answers, most + " × " + recoded.sum() + " ÷ " + recoded.highestSum() + " = " + Plain.number(value));
    }

    @Override
    public String words() {
        String sum = reversed.isEmpty() ? "sum of the items"
                : "sum of the items, with items " + String.join(", ", reversed.stream().sorted().map(String::valueOf).toList())
                        + " turned round";
        return sum + (missing == Missing.BOUND ? "; missing items give bounds, not a score"
                : "; with at least " + minimumAnswered + " answered, scaled up to all items and marked");
    }
}
