package org.steadwork.redflag.rules;

import java.util.List;
import org.steadwork.kernel.Answer;

/**
 * The clinical criteria for complex regional pain syndrome: pain out of proportion, symptoms in 3 of 4 groups, signs in 2 of
 * 4 groups, and nothing else that explains it better.
 *
 * <p>Outcomes: PATTERN_MET, PATTERN_NOT_MET, INCOMPLETE. Accuracy: sensitivity 0.99, specificity 0.68 (113 with the syndrome,
 * 47 with other nerve pain). Source: Harden 2010 Pain 150:268.
 */
public final class RegionalPainCriteria implements PublishedRule {

    private static final int SYMPTOM_GROUPS = 3;
    private static final int SIGN_GROUPS = 2;
    private static final List<String> SYMPTOMS =
            List.of("crps_symptom_sensory", "crps_symptom_vasomotor", "crps_symptom_sudomotor", "crps_symptom_motor");
    private static final List<String> SIGNS =
            List.of("crps_sign_sensory", "crps_sign_vasomotor", "crps_sign_sudomotor", "crps_sign_motor");

    @Override
    public String id() {
        return "ALG-CRPS";
    }

    @Override
    public List<String> items() {
        return List.of("crps_out_of_proportion", SYMPTOMS.get(0), SYMPTOMS.get(1), SYMPTOMS.get(2), SYMPTOMS.get(3),
                SIGNS.get(0), SIGNS.get(1), SIGNS.get(2), SIGNS.get(3), "crps_nothing_else");
    }

    @Override
    public RuleResult evaluate(ScreenAnswers answers) {
        Answer met = Logic.allOf(answers.of("crps_out_of_proportion"),
                Logic.atLeast(SYMPTOM_GROUPS, SYMPTOMS.stream().map(answers::of).toList()),
                Logic.atLeast(SIGN_GROUPS, SIGNS.stream().map(answers::of).toList()),
                answers.of("crps_nothing_else"));
        return RuleResult.of(switch (met) {
            case YES -> Outcome.PATTERN_MET;
            case NO -> Outcome.PATTERN_NOT_MET;
            default -> Outcome.INCOMPLETE;
        });
    }
}
