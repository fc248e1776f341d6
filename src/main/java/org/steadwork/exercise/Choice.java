package org.steadwork.exercise;

import java.util.List;
import org.steadwork.exercise.dayplan.DoseWords;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.web.Option;

/**
 * The exercises offered to choose from.
 *
 * @param groups   by region
 * @param regions  regions to narrow to
 * @param region   the region narrowed to; empty for those of the case
 * @param reported true when the case has regions reported
 * @param sets     ready sets, each with a page of its own
 */
record Choice(List<Group> groups, List<Option> regions, String region, boolean deskOnly, boolean reported, List<ReadySet> sets) {

    /** The exercises of one region. */
    record Group(String label, List<Row> rows) {
    }

    /** One exercise with what stands against it. {@code given} is true when it is given already. */
    record Row(Exercise exercise, CaseSafety.Verdict verdict, boolean given) {

        public String usualDose() {
            return DoseWords.usual(exercise);
        }
    }

    public int count() {
        return groups.stream().mapToInt(g -> g.rows().size()).sum();
    }
}
