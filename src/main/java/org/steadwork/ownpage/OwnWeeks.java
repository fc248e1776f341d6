package org.steadwork.ownpage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.steadwork.exercise.OwnProgramme;
import org.steadwork.exercise.dayplan.Adherence;

/** Sessions ticked against sessions planned, week by week, as reported by the patient. */
record OwnWeeks(List<LocalDate> ends, List<Row> rows) {

    static final int WEEKS = 4;
    private static final int DAYS = 7;

    /** One exercise over the weeks. */
    record Row(long prescription, String name, List<Cell> cells) {
    }

    /**
     * One week of one exercise.
     *
     * @param daysWithout days of the week on which nothing was ticked
     * @param highestPain highest pain after a session, or null
     */
    record Cell(Adherence adherence, int daysWithout, Integer highestPain) {

        public String words() {
            return adherence.done() + " of " + adherence.planned();
        }
    }

    /** @param ticks those of the last weeks up to {@code today} that stand */
    static OwnWeeks of(OwnProgramme programme, List<SessionTick> ticks, LocalDate today) {
        List<LocalDate> ends = new ArrayList<>();
        for (int week = WEEKS - 1; week >= 0; week--) {
            ends.add(today.minusDays((long) DAYS * week));
        }
        List<Row> rows = programme.items().stream().map(item -> new Row(item.id(), item.name(), ends.stream()
                .map(end -> cell(item, ticks.stream().filter(t -> t.prescription().id().equals(item.id()) && t.doneOn().isAfter(end.minusDays(DAYS)) && !t.doneOn().isAfter(end)).toList()))
                .toList())).toList();
        return new OwnWeeks(ends, rows);
    }

    private static Cell cell(OwnProgramme.Item item, List<SessionTick> ticks) {
        Set<LocalDate> days = ticks.stream().map(SessionTick::doneOn).collect(Collectors.toCollection(TreeSet::new));
        return new Cell(new Adherence(ticks.size(), item.plannedAWeek()), DAYS - days.size(), ticks.stream().map(SessionTick::painAfter).filter(p -> p != null).max(Integer::compare).orElse(null));
    }

    Cell latest(Row row) {
        return row.cells().get(row.cells().size() - 1);
    }
}
