package org.steadwork.caseload;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.steadwork.caseload.statistics.CountTable;
import org.steadwork.caseload.statistics.SmallNumbers;
import org.steadwork.caseload.statistics.WithheldTable;

/**
 * The counts of people that may leave the clinic. Every table has the same rows, and the number of people in each row is at least the
 * smallest count shown and stands in all of them; apart from that no two tables count the same fact or one that follows from another.
 * So a reader who lays them side by side knows no more of a withheld cell than its own table tells, and each table is protected by
 * itself. A table that could be protected only by withholding the people of a row is given for the employer as a whole, or not at all.
 */
final class GroupCounts {

    static final String ALL_PLACES = "All places";

    /** A fact with its possible answers, of which every person has one. */
    record Fact(String key, String title, List<String> answers, ToIntFunction<ReportPerson> answer) {
        Fact {
            answers = List.copyOf(answers);
        }
    }

    /**
     * A table fit to leave: its rows in the order of the places, the last one all places.
     *
     * @param table the counts and what is withheld; only {@code shown} may leave
     */
    record Protected(Fact fact, List<String> places, WithheldTable table) {
    }

    private final Map<String, List<ReportPerson>> places;
    private final SmallNumbers rule;

    private GroupCounts(Map<String, List<ReportPerson>> places, SmallNumbers rule) {
        this.places = places;
        this.rule = rule;
    }

    /** Begins to count; empty when there are too few people altogether. */
    static Optional<GroupCounts> of(List<ReportPerson> people, int fewest) {
        return ReportPlaces.of(people, fewest).map(places -> new GroupCounts(places, new SmallNumbers(fewest, SmallNumbers.Columns.FACTS)));
    }

    /** Returns the places with their number of people, none smaller than the smallest count shown. */
    Map<String, List<ReportPerson>> places() {
        return places;
    }

    int people() {
        return places.values().stream().mapToInt(List::size).sum();
    }

    /** Returns how many people have any of the first answers of a fact but the last, which stands for "none or not known". */
    int withFact(Fact fact) {
        return (int) places.values().stream().flatMap(List::stream).filter(person -> fact.answer().applyAsInt(person) < fact.answers().size() - 1).count();
    }

    /** Counts a fact by place or, where that cannot be protected, for all places together; empty where that cannot either. */
    Optional<Protected> count(Fact fact) {
        List<String> names = new ArrayList<>(places.keySet());
        int[][] byPlace = new int[names.size()][fact.answers().size()];
        int[][] together = new int[1][fact.answers().size()];
        for (int row = 0; row < names.size(); row++) {
            for (ReportPerson person : places.get(names.get(row))) {
                int answer = fact.answer().applyAsInt(person);
                byPlace[row][answer]++;
                together[0][answer]++;
            }
        }
        if (names.size() > 1) {
            WithheldTable table = WithheldTable.of(CountTable.of(byPlace), rule);
            if (peopleStand(table) && anythingStands(table)) {
                return Optional.of(new Protected(fact, names, table));
            }
        }
        WithheldTable table = WithheldTable.of(CountTable.of(together), rule);
        return peopleStand(table) && anythingStands(table) ? Optional.of(new Protected(fact, List.of(ALL_PLACES), table)) : Optional.empty();
    }

    /** Whether every row's number of people is shown, as the list of places shows it anyway. */
    private static boolean peopleStand(WithheldTable table) {
        for (int row = 0; row <= table.counts().rows(); row++) {
            if (table.shown(row, table.counts().columns()).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** Whether a number of people with an answer is shown; noughts alone say nothing that is worth a table. */
    private static boolean anythingStands(WithheldTable table) {
        for (int row = 0; row <= table.counts().rows(); row++) {
            for (int column = 0; column < table.counts().columns(); column++) {
                if (table.shown(row, column).orElse(0) > 0) {
                    return true;
                }
            }
        }
        return false;
    }
}
