package org.steadwork.redflag.rules;

import java.util.List;
import org.steadwork.kernel.Answer;

/**
 * The expert criteria for inflammatory back pain: 4 or 5 of five items, in back pain of more than 3 months.
 *
 * <p>Outcomes: MET, NOT_MET, NOT_APPLICABLE, INCOMPLETE. Accuracy for the pattern, not for the disease: sensitivity 77.0 %,
 * specificity 91.7 %; validation in 648 patients 79.6 % and 72.4 %. Source: Sieper 2009 Ann Rheum Dis 68:784.
 */
public final class InflammatoryBackPainCriteria implements PublishedRule {

    private static final int MET_FROM = 4;
    private static final String GATE = "ibp_over_3_months";
    private static final List<String> COUNTED =
            List.of("ibp_under_40", "ibp_gradual", "ibp_better_exercise", "ibp_not_better_rest", "ibp_night");

    @Override
    public String id() {
        return "ALG-IBP";
    }

    @Override
    public List<String> items() {
        return List.of(GATE, COUNTED.get(0), COUNTED.get(1), COUNTED.get(2), COUNTED.get(3), COUNTED.get(4));
    }

    @Override
    public RuleResult evaluate(ScreenAnswers answers) {
        Answer gate = answers.of(GATE);
        Range count = Range.of(COUNTED.stream().map(answers::of).toList());
        if (gate != Answer.YES) {
            return RuleResult.of(gate == Answer.NO ? Outcome.NOT_APPLICABLE : Outcome.INCOMPLETE, count);
        }
        return RuleResult.of(switch (count.atLeast(MET_FROM)) {
            case YES -> Outcome.MET;
            case NO -> Outcome.NOT_MET;
            default -> Outcome.INCOMPLETE;
        }, count);
    }
}
