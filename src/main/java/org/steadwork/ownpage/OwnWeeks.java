package org.steadwork.ownpage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
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
     * @param days         days of the week on which it was given and could be ticked, [0, 7]; what is planned is counted in proportion to them
     * @param daysWithout  of these, days on which nothing was ticked
     * @param highestPain  highest pain after a session, or null
     */
    record Cell(Adherence adherence, int days, int daysWithout, Integer highestPain) {

        public String words() {
            return adherence.done() + " of " + adherence.planned();
        }

        /** False where there was no page to tick on, or no such exercise: nothing is known of that week. */
        public boolean told() {
            return days > 0;
        }
    }

    /**
     * @param ticks those of the last weeks up to {@code today} that stand
     * @param since day of the first link; null where there was none
     */
    static OwnWeeks of(OwnProgramme programme, List<SessionTick> ticks, LocalDate today, LocalDate since) {
        List<LocalDate> ends = new ArrayList<>();
        for (int week = WEEKS - 1; week >= 0; week--) {
            ends.add(today.minusDays((long) DAYS * week));
        }
        List<Row> rows = programme.items().stream().map(item -> new Row(item.id(), item.name(), ends.stream()
                .map(end -> cell(item, ticks.stream().filter(t -> t.prescription().id().equals(item.id()) && t.doneOn().isAfter(end.minusDays(DAYS)) && !t.doneOn().isAfter(end)).toList(),
                        days(end, since, item.since())))
                .toList())).toList();
        return new OwnWeeks(ends, rows);
    }

    /** Days of the week to a day from which on there was both a page and the exercise. */
    private static int days(LocalDate end, LocalDate link, LocalDate given) {
        if (link == null) {
            return 0;
        }
        LocalDate from = link.isAfter(given) ? link : given;
        return (int) Math.max(0, Math.min(DAYS, ChronoUnit.DAYS.between(from, end) + 1));
    }

    private static Cell cell(OwnProgramme.Item item, List<SessionTick> ticks, int days) {
        Set<LocalDate> ticked = ticks.stream().map(SessionTick::doneOn).collect(Collectors.toCollection(TreeSet::new));
        int planned = (int) Math.round((double) item.plannedAWeek() * days / DAYS);
        return new Cell(new Adherence(ticks.size(), planned), days, Math.max(0, days - ticked.size()),
                ticks.stream().map(SessionTick::painAfter).filter(p -> p != null).max(Integer::compare).orElse(null));
    }

    Cell latest(Row row) {
        return row.cells().get(row.cells().size() - 1);
    }
}
