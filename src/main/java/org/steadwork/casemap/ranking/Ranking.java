package org.steadwork.casemap.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Ranks candidates for links by deviation × exposed hours × strength of association, the largest first.
 * Where the hours were not recorded there is no product: those follow after, by deviation × strength, so that what is
 * unknown is neither taken for nothing nor put before what is known. Equal ones keep the order they were given in.
 * Source: a rule of this project, no outside source; the clinician decides each candidate.
 */
public final class Ranking {

    private static final Comparator<Candidate> ORDER = Comparator
            .comparing((Candidate c) -> c.score() == null)
            .thenComparing(Comparator.comparingDouble((Candidate c) -> c.score() == null ? c.finding().withoutHours() : c.score()).reversed());

    private Ranking() {
    }

    /** Every pair that shares a region, ranked; a finding nobody is exposed to (0 hours) gives none. */
    public static List<Candidate> of(List<Complaint> complaints, List<WorkFinding> findings) {
        List<Candidate> candidates = new ArrayList<>();
        for (Complaint complaint : complaints) {
            for (WorkFinding finding : findings) {
                Double hours = finding.hoursADay();
                if (complaint.regions().stream().anyMatch(finding.regions()::contains) && (hours == null || hours > 0)) {
                    candidates.add(new Candidate(complaint, finding, hours == null ? null : finding.withoutHours() * hours));
                }
            }
        }
        candidates.sort(ORDER);
        return List.copyOf(candidates);
    }
}
