package org.steadwork.outcome;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.PlanChanges;
import org.steadwork.casefile.Visit;
import org.steadwork.drawing.PlanMark;
import org.steadwork.drawing.Trend;
import org.steadwork.outcome.scoring.Direction;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.Threshold;

/** Makes the course of a measure into what a chart draws: the one place where it is done. */
@ApplicationScoped
public class MeasureTrends {

    @Inject
    @Any
    Instance<PlanChanges> changes;

    /** Returns the changes of the plan from the opening of a case up to a day. */
    public List<PlanMark> marks(CaseFile file, LocalDate until) {
        return changes.stream().flatMap(part -> part.of(file).stream())
                .filter(mark -> !mark.date().isBefore(file.openedOn()) && !mark.date().isAfter(until)).toList();
    }

    /**
     * Makes the trend of a course over the visits that were held or missed; a visit without a score stays open.
     *
     * @param prefix of the drawing's id, so that a measure can stand on a page twice
     * @param course with at least one point
     */
    public static Trend of(String prefix, MeasureCourse course, List<Visit> visits, List<PlanMark> marks) {
        Map<LocalDate, Double> days = new TreeMap<>();
        visits.stream().filter(visit -> visit.attendance() != Attendance.PLANNED).forEach(visit -> days.put(visit.visitedOn(), null));
        course.points().forEach(point -> days.put(point.on(), point.value()));
        double first = course.points().get(0).value();
        Instrument instrument = course.instrument();
        return new Trend(prefix + "-" + instrument.key().replace('_', '-'), instrument.label(), instrument.unit(), instrument.lowest(),
                instrument.highest(), instrument.direction() == Direction.LOWER_BETTER, instrument.decimals(),
                days.entrySet().stream().map(day -> new Trend.Visit(day.getKey(), day.getValue())).toList(), amount(course.error(), first),
                amount(course.importance(), first), marks);
    }

    // a percentage of a baseline of nought is no amount that can be drawn
    private static Double amount(Optional<Threshold> threshold, double baseline) {
        return threshold.map(t -> t.points(baseline)).filter(points -> points > 0).orElse(null);
    }
}
