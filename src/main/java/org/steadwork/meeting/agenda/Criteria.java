package org.steadwork.meeting.agenda;

import java.util.List;

/** The criteria of the review meeting, in the order in which their reasons are told. */
public record Criteria(List<Criterion> all) {

    public Criteria {
        all = List.copyOf(all);
    }

    /** Returns the reasons that hold for a case, then what of it cannot be judged; empty when every criterion was judged and none holds. */
    public List<Reason> judge(CaseFacts facts) {
        List<Reason> found = all.stream().flatMap(criterion -> criterion.rule().judge(criterion, facts).stream()).toList();
        return found.stream().sorted((one, other) -> Boolean.compare(other.holds(), one.holds())).toList();
    }
}
