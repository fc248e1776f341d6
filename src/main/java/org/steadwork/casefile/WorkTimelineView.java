package org.steadwork.casefile;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.steadwork.drawing.WorkTimeline;
import org.steadwork.web.Dates;

/**
 * The work status of a case as a drawing and a table.
 *
 * @param drawing SVG, blank when nothing is entered
 * @param rows the newest first
 * @param lost days off for this problem, in words
 */
public record WorkTimelineView(String drawing, List<Row> rows, String lost) {

    /** One spell; {@code days} counts up to today at most. */
    public record Row(WorkStatus status, String until, long days) {
    }

    /** Lays out the spells of a case up to a day; with the usual hours known, fewer hours are drawn as their share. */
    public static WorkTimelineView of(WorkHistory history, CaseFile file, LocalDate today) {
        List<WorkTimeline.Spell> spells = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        List<WorkStatus> all = history.spells();
        for (int i = 0; i < all.size(); i++) {
            WorkStatus status = all.get(i);
            if (status.from().isAfter(today)) {
                rows.add(0, new Row(status, status.until() == null ? "open" : Dates.shown(status.until()), 0));
                continue;
            }
            LocalDate last = history.lastDay(i, today);
            spells.add(new WorkTimeline.Spell(status.from(), last, kind(status.code()), status.code().label(), status.details(),
                    share(status, file.patient().hoursAWeek())));
            rows.add(0, new Row(status, status.until() == null ? i + 1 < all.size() ? Dates.shown(all.get(i + 1).from().minusDays(1)) : "open"
                    : Dates.shown(status.until()), Math.max(0, ChronoUnit.DAYS.between(status.from(), last) + 1)));
        }
        long off = history.daysOff(today);
        String drawing = spells.isEmpty() ? "" : WorkTimeline.figure(new WorkTimeline(spells, file.openedOn(), today));
        return new WorkTimelineView(drawing, rows, off + (off == 1 ? " calendar day" : " calendar days") + " off for this problem so far");
    }

    private static Double share(WorkStatus status, BigDecimal usual) {
        if (status.hoursAWeek() == null || usual == null || status.hoursAWeek().signum() == 0 || status.hoursAWeek().compareTo(usual) > 0) {
            return null;
        }
        return status.hoursAWeek().doubleValue() / usual.doubleValue();
    }

    private static WorkTimeline.Kind kind(WorkStatusCode code) {
        return switch (code) {
            case FULL -> WorkTimeline.Kind.FULL;
            case MODIFIED -> WorkTimeline.Kind.CHANGED;
            case REDUCED -> WorkTimeline.Kind.FEWER_HOURS;
            case OFF -> WorkTimeline.Kind.OFF;
            case OFF_OTHER -> WorkTimeline.Kind.AWAY;
            case UNKNOWN -> WorkTimeline.Kind.UNKNOWN;
        };
    }
}
