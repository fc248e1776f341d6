package org.steadwork.worklist;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.ToLongFunction;

/**
 * What one clinician carries.
 *
 * @param active false for an account that is closed and still has open cases
 * @param oldest day since which the oldest entry stands open, or null
 * @param unsigned notes, screens and letters that waited for a signature yesterday already
 */
record TeamRow(Long id, String name, boolean active, long cases, long now, long today, long soon, LocalDate oldest, long snoozed, long unsigned, long overdue, long visits) {

    static TeamRow total(List<TeamRow> rows) {
        return new TeamRow(null, "The clinic", true, sum(rows, TeamRow::cases), sum(rows, TeamRow::now), sum(rows, TeamRow::today), sum(rows, TeamRow::soon),
                rows.stream().map(TeamRow::oldest).filter(Objects::nonNull).min(Comparator.naturalOrder()).orElse(null), sum(rows, TeamRow::snoozed),
                sum(rows, TeamRow::unsigned), sum(rows, TeamRow::overdue), sum(rows, TeamRow::visits));
    }

    private static long sum(List<TeamRow> rows, ToLongFunction<TeamRow> figure) {
        return rows.stream().mapToLong(figure).sum();
    }
}
