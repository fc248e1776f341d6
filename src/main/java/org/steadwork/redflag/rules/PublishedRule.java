package org.steadwork.redflag.rules;

import java.util.List;
import org.steadwork.kernel.Answer;

/** A decision rule kept exactly as published, in three-valued logic; no rule here lowers the level of a screen. */
public interface PublishedRule {

    /** Every published rule, in the order in which they are shown. */
    List<PublishedRule> ALL = List.of(new CanadianCSpineRule(), OttawaAnkleFootRule.ankle(), OttawaAnkleFootRule.foot(),
            new OttawaKneeRule(), new LegClotScore(), new InflammatoryBackPainCriteria(), new SpondyloarthritisReferral(),
            new MyelopathyCluster(), new RegionalPainCriteria());

    String id();

    /** Returns the keys of the rule's items, in the order in which they are asked. */
    List<String> items();

    RuleResult evaluate(ScreenAnswers answers);

    /**
     * Says whether the rule calls for action, as an answer that combination rules can use. An incomplete rule of which
     * something is yes or unknown is UNKNOWN; one that nothing speaks for yet is NOT_ASKED.
     */
    default Answer callsForAction(ScreenAnswers answers) {
        Outcome outcome = evaluate(answers).outcome();
        if (outcome != Outcome.INCOMPLETE) {
            return outcome.callsForAction() ? Answer.YES : Answer.NO;
        }
        boolean begun = items().stream().filter(item -> !readFromAge(item)).map(answers::of)
                .anyMatch(answer -> answer == Answer.YES || answer == Answer.UNKNOWN);
        return begun ? Answer.UNKNOWN : Answer.NOT_ASKED;
    }

    /** True for an item that is read from the date of birth and so does not show that anybody began the rule. */
    default boolean readFromAge(String item) {
        return false;
    }
}
