package org.steadwork.redflag.rules;

import java.util.ArrayList;
import java.util.List;
import org.steadwork.kernel.Answer;

/**
 * The referral count for suspected axial spondyloarthritis, in back pain that began before 45 and has lasted over 3 months.
 *
 * <p>Of nine items, 4 or more is REFER_RHEUM, exactly 3 ASK_GP_HLA_B27, fewer BELOW_CRITERIA; without the gate
 * NOT_APPLICABLE; otherwise INCOMPLETE. Never rules out on a single item. Source: NICE NG65.
 */
public final class SpondyloarthritisReferral implements PublishedRule {

    private static final int REFER_FROM = 4;
    private static final int ASK_AT = 3;
    private static final List<String> GATE = List.of("ng65_began_before_45", "ng65_over_3_months");
    private static final List<String> COUNTED = List.of("ng65_before_35", "ng65_wakes", "ng65_buttock", "ng65_better_moving",
            "ng65_anti_inflammatory", "ng65_relative", "ng65_arthritis", "ng65_enthesitis", "ng65_psoriasis");

    @Override
    public String id() {
        return "ALG-NG65";
    }

    @Override
    public List<String> items() {
        List<String> items = new ArrayList<>(GATE);
        items.addAll(COUNTED);
        return List.copyOf(items);
    }

    @Override
    public RuleResult evaluate(ScreenAnswers answers) {
        Range count = Range.of(COUNTED.stream().map(answers::of).toList());
        Answer gate = Logic.allOf(GATE.stream().map(answers::of).toList());
        return RuleResult.of(outcome(gate, count), count);
    }

    private static Outcome outcome(Answer gate, Range count) {
        if (gate != Answer.YES) {
            return gate == Answer.NO ? Outcome.NOT_APPLICABLE : Outcome.INCOMPLETE;
        }
        if (count.high() < ASK_AT) {
            return Outcome.BELOW_CRITERIA;
        }
        if (count.low() >= REFER_FROM) {
            return Outcome.REFER_RHEUM;
        }
        return count.low() == ASK_AT && count.high() == ASK_AT ? Outcome.ASK_GP_HLA_B27 : Outcome.INCOMPLETE;
    }
}
