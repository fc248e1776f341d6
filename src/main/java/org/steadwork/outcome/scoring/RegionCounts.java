package org.steadwork.outcome.scoring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A survey by body region: the same few yes/no questions for each region, the first of which opens the others. It has no total, only
 * counts of regions for each question, each out of the regions that were answered.
 *
 * <p>No to the first question is no to the others of the region, whether they were answered or not. A yes after that no is a
 * contradiction and is refused, to be asked again (a rule of ours). A region without an answer stays unknown and leaves the denominator.
 *
 * @param questions in the order in which they are asked of each region; the items stand region by region
 * Source: Kuorinka et al., Appl Ergon 1987;18:233 (structure); Crawford, Occup Med 2007;57:300.
 */
public record RegionCounts(List<String> questions) implements ScoringRule {

    private static final int YES = 1;
    private static final int NO = 0;

    public RegionCounts {
        questions = List.copyOf(questions);
    }

    @Override
    public Scored score(ItemAnswers answers) {
        if (answers.answered() == 0) {
            return Scored.none(answers, "Nothing answered");
        }
        int size = questions.size();
        int[] yes = new int[size];
        int[] answered = new int[size];
        for (int start = 0; start < answers.items().size(); start += size) {
            Integer opening = answers.values().get(start);
            for (int q = 0; q < size; q++) {
                Integer answer = answers.values().get(start + q);
                if (opening != null && opening == NO && answer != null && answer == YES) {
                    throw InvalidAnswer.contradiction(answers.items().get(start + q), answers.items().get(start));
                }
                Integer counted = opening != null && opening == NO ? Integer.valueOf(NO) : answer;
                answered[q] += counted == null ? 0 : 1;
                yes[q] += counted == null ? 0 : counted;
            }
        }
        Map<String, Double> counts = new LinkedHashMap<>();
        List<String> working = new ArrayList<>();
        for (int q = 0; q < size; q++) {
            counts.put(questions.get(q), (double) yes[q]);
            working.add(questions.get(q) + ": " + yes[q] + " of " + answered[q] + " regions answered");
        }
        return Scored.counted(counts, answers, String.join("; ", working));
    }

    @Override
    public boolean hasTotal() {
        return false;
    }

    @Override
    public String words() {
        return "no total: how many regions are answered yes, for each question; an unanswered region is left out of its count";
    }
}
