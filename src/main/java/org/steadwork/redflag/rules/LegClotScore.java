package org.steadwork.redflag.rules;

import java.util.ArrayList;
import java.util.List;
import org.steadwork.kernel.Answer;

/**
 * The two-level leg clot score: one point for each of nine items, two off for another cause at least as likely.
 *
 * <p>The score lies in [−2, 9]; 2 or more is LIKELY, 1 or less UNLIKELY; INCOMPLETE is treated as likely. Both are a medical
 * matter the same day: the score never lowers a flag. Accuracy: clot found in 5.5 % of unlikely and 27.9 % of likely.
 * Source: Wells 2003 N Engl J Med 349:1227; NICE NG158.
 */
public final class LegClotScore implements PublishedRule {

    private static final int LIKELY_FROM = 2;
    private static final int OTHER_CAUSE = -2;
    private static final List<String> ONE_POINT_EACH = List.of("wells_cancer", "wells_paralysis", "wells_bed_or_surgery",
            "wells_vein_tender", "wells_whole_leg", "wells_calf_3_cm", "wells_pitting", "wells_collateral", "wells_past_clot");

    @Override
    public String id() {
        return "ALG-WELLS";
    }

    @Override
    public List<String> items() {
        List<String> items = new ArrayList<>(ONE_POINT_EACH);
        items.add("wells_other_cause");
        return List.copyOf(items);
    }

    @Override
    public RuleResult evaluate(ScreenAnswers answers) {
        Range score = Range.of(ONE_POINT_EACH.stream().map(answers::of).toList())
                .plus(Range.points(answers.of("wells_other_cause"), OTHER_CAUSE));
        Answer likely = score.atLeast(LIKELY_FROM);
        return RuleResult.of(switch (likely) {
            case YES -> Outcome.LIKELY;
            case NO -> Outcome.UNLIKELY;
            default -> Outcome.INCOMPLETE;
        }, score);
    }
}
