package org.steadwork.redflag.rules;

import java.util.List;
import org.steadwork.kernel.Answer;

/**
 * The Canadian C-spine rule for alert, stable people of 16 or over with fresh blunt injury of neck or head.
 *
 * <p>Turning the head is looked at only when no high-risk item is yes or open. Age limit 65 years, turning 45 degrees.
 * Outcomes: IMAGING_BY_RULE, NO_IMAGING_BY_RULE, NOT_APPLICABLE, INCOMPLETE. Accuracy: derivation sensitivity 100 %,
 * specificity 42.5 to 43 %; validation 99.4 % and 45.1 %. Source: Stiell 2001 JAMA; Stiell 2003 N Engl J Med 349:2510.
 */
public final class CanadianCSpineRule implements PublishedRule {

    @Override
    public String id() {
        return "ALG-CCR";
    }

    @Override
    public List<String> items() {
        return List.of("ccr_applies", "ccr_age_65", "ccr_dangerous", "ccr_tingling", "ccr_low_risk", "ccr_rotation_left",
                "ccr_rotation_right");
    }

    @Override
    public boolean readFromAge(String item) {
        return item.equals("ccr_age_65");
    }

    @Override
    public RuleResult evaluate(ScreenAnswers answers) {
        return RuleResult.of(outcome(answers));
    }

    private static Outcome outcome(ScreenAnswers answers) {
        Answer applies = answers.of("ccr_applies");
        if (applies != Answer.YES) {
            return applies == Answer.NO ? Outcome.NOT_APPLICABLE : Outcome.INCOMPLETE;
        }
        Answer highRisk = Logic.anyOf(answers.of("ccr_age_65"), answers.of("ccr_dangerous"), answers.of("ccr_tingling"));
        if (highRisk != Answer.NO) {
            return highRisk == Answer.YES ? Outcome.IMAGING_BY_RULE : Outcome.INCOMPLETE;
        }
        Answer lowRisk = answers.of("ccr_low_risk");
        if (lowRisk != Answer.YES) {
            return lowRisk == Answer.NO ? Outcome.IMAGING_BY_RULE : Outcome.INCOMPLETE;
        }
        return switch (Logic.allOf(answers.of("ccr_rotation_left"), answers.of("ccr_rotation_right"))) {
            case YES -> Outcome.NO_IMAGING_BY_RULE;
            case NO -> Outcome.IMAGING_BY_RULE;
            default -> Outcome.INCOMPLETE;
        };
    }
}
