package org.steadwork.redflag.rules;

import java.util.List;
import org.steadwork.kernel.Answer;

/**
 * The Ottawa ankle rule and the Ottawa foot rule: pain in the zone and any of three items calls for an X-ray.
 *
 * <p>For adults, injury within 10 days. Outcomes: XRAY_BY_RULE, NO_XRAY_BY_RULE, NOT_APPLICABLE (no pain in the zone),
 * INCOMPLETE. Accuracy: 27 studies, pooled sensitivity 97.6 %, median specificity 31.5 %, negative likelihood ratio 0.08.
 * Source: Stiell 1992; Bachmann 2003 BMJ 326:417.
 */
public final class OttawaAnkleFootRule implements PublishedRule {

    private final String id;
    private final String zone;
    private final List<String> any;

    private OttawaAnkleFootRule(String id, String zone, List<String> any) {
        this.id = id;
        this.zone = zone;
        this.any = any;
    }

    public static OttawaAnkleFootRule ankle() {
        return new OttawaAnkleFootRule("ALG-OAR", "oar_zone", List.of("oar_lateral", "oar_medial", "oar_no_steps"));
    }

    public static OttawaAnkleFootRule foot() {
        return new OttawaAnkleFootRule("ALG-OFR", "ofr_zone", List.of("ofr_fifth", "ofr_navicular", "ofr_no_steps"));
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public List<String> items() {
        return List.of(zone, any.get(0), any.get(1), any.get(2));
    }

    @Override
    public RuleResult evaluate(ScreenAnswers answers) {
        Answer inZone = answers.of(zone);
        if (inZone != Answer.YES) {
            return RuleResult.of(inZone == Answer.NO ? Outcome.NOT_APPLICABLE : Outcome.INCOMPLETE);
        }
        return RuleResult.of(switch (Logic.anyOf(any.stream().map(answers::of).toList())) {
            case YES -> Outcome.XRAY_BY_RULE;
            case NO -> Outcome.NO_XRAY_BY_RULE;
            default -> Outcome.INCOMPLETE;
        });
    }
}
