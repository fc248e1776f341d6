package org.steadwork.redflag.rules;

import java.util.List;

/**
 * The Ottawa knee rule: any of five items calls for an X-ray of a knee injured within 7 days.
 *
 * <p>Age limit 55 years, bending limit 90 degrees. Outcomes: XRAY_BY_RULE, NO_XRAY_BY_RULE, INCOMPLETE. Accuracy: 6 studies,
 * 4249 adults, pooled sensitivity 98.5 %, specificity 48.6 %, negative likelihood ratio 0.05.
 * Source: Stiell 1995, 1996; Bachmann 2004 Ann Intern Med 140:121.
 */
public final class OttawaKneeRule implements PublishedRule {

    @Override
    public String id() {
        return "ALG-OKR";
    }

    @Override
    public List<String> items() {
        return List.of("okr_age_55", "okr_patella", "okr_fibula", "okr_no_bend_90", "okr_no_steps");
    }

    @Override
    public boolean readFromAge(String item) {
        return item.equals("okr_age_55");
    }

    @Override
    public RuleResult evaluate(ScreenAnswers answers) {
        return RuleResult.of(switch (Logic.anyOf(items().stream().map(answers::of).toList())) {
            case YES -> Outcome.XRAY_BY_RULE;
            case NO -> Outcome.NO_XRAY_BY_RULE;
            default -> Outcome.INCOMPLETE;
        });
    }
}
