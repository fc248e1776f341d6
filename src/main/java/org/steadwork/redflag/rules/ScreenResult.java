package org.steadwork.redflag.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the answers of one screen amount to; it names possibilities, never a diagnosis.
 *
 * @param incomplete true when an open answer could change the outcome, also beside a positive verdict
 * @param urgency the worst level that answers of "yes" or "unknown" bring
 * @param couldBe the worst level that the open answers could still bring; acted on until they are given
 * @param facts the facts that decide which questions are due, in the order in which they are asked
 * @param due the keys that have to be "no" for a clear screen
 * @param suspended tokens suspended by what is raised and by due questions that are not asked
 * @param advice rules that hold and only advise
 * @param published the results of the published rules, by id
 */
public record ScreenResult(Verdict verdict, boolean incomplete, Optional<Urgency> urgency, Optional<Urgency> couldBe,
                           List<Raised> raised, List<OpenAnswer> open, List<String> facts, List<DueKey> due,
                           Set<String> suspended, List<CombinationRule> advice, Map<String, RuleResult> published) {

    /** A key that is due, with the title of the layer that asks for it. */
    public record DueKey(String key, String title) {
    }
}
