package org.steadwork.redflag.rules;

import java.util.List;
import org.steadwork.kernel.Answer;

/**
 * The five-item cluster for cervical myelopathy: 3 or more CLUSTER_POSITIVE, 2 INTERMEDIATE, 0 or 1 LOW, else INCOMPLETE.
 *
 * <p>LOW does not rule out cord disease and never cancels a cord symptom. Accuracy: 3 or more of 5, likelihood ratio 30.9
 * (95 % CI 5.5 to 181.8); 1 or fewer, 0.18 (0.12 to 0.42); 249 patients in specialist care.
 * Source: Cook 2010 J Man Manip Ther 18:175.
 */
public final class MyelopathyCluster implements PublishedRule {

    private static final int POSITIVE_FROM = 3;
    private static final int LOW_TO = 1;

    @Override
    public String id() {
        return "ALG-DCM";
    }

    @Override
    public List<String> items() {
        return List.of("dcm_gait", "dcm_hoffmann", "dcm_inverted_supinator", "dcm_babinski", "dcm_over_45");
    }

    @Override
    public boolean readFromAge(String item) {
        return item.equals("dcm_over_45");
    }

    @Override
    public RuleResult evaluate(ScreenAnswers answers) {
        Range count = Range.of(items().stream().map(answers::of).toList());
        return RuleResult.of(outcome(count), count);
    }

    private static Outcome outcome(Range count) {
        if (count.low() >= POSITIVE_FROM) {
            return Outcome.CLUSTER_POSITIVE;
        }
        if (count.high() <= LOW_TO) {
            return Outcome.LOW;
        }
        return count.low() == count.high() ? Outcome.INTERMEDIATE : Outcome.INCOMPLETE;
    }

    /** Says whether three or more items are certain, impossible or still open. */
    @Override
    public Answer callsForAction(ScreenAnswers answers) {
        Answer positive = evaluate(answers).count().orElseThrow().atLeast(POSITIVE_FROM);
        return positive == Answer.UNKNOWN ? PublishedRule.super.callsForAction(answers) : positive;
    }
}
