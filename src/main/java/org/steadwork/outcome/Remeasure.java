package org.steadwork.outcome;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.steadwork.outcome.scoring.Threshold;
import org.steadwork.outcome.scoring.TheilSen;
import org.steadwork.web.Dates;

/**
 * The earliest day on which measuring again could tell anything: when the change at the pace so far would exceed measurement error.
 *
 * @param from that day; null when the pace so far is too slow or not known
 * @param words why, with the numbers
 * Source: error divided by the expected change a week, as in published guidance on when to re-measure; the pace is the Theil–Sen
 * slope of the scores so far.
 */
public record Remeasure(LocalDate from, String words) {

    private static final int MOST_WEEKS = 26;

    /** Works the day out for a course; empty for a screen and for a course without a score or a known error. */
    static Optional<Remeasure> of(MeasureCourse course) {
        Optional<Double> error = course.error().map(threshold -> points(threshold, course));
        if (!course.instrument().outcome() || course.points().isEmpty() || error.isEmpty() || !(error.get() > 0)) {
            return Optional.empty();
        }
        LocalDate latest = course.latest().orElseThrow().on();
        if (course.trend().isEmpty()) {
            return Optional.of(new Remeasure(null, "The pace is known from three scores on; until then the schedule says when: "
                    + course.instrument().scheduleWords() + "."));
        }
        TheilSen trend = course.trend().get();
        double weekly = Math.abs(trend.slope());
        double weeks = error.get() / weekly;
        if (!(weeks <= MOST_WEEKS)) {
            return Optional.of(new Remeasure(null, "At the pace so far a change of " + Shown.amount(error.get())
                    + " would take more than half a year: measuring again tells something only after the plan changes."));
        }
        LocalDate from = latest.plusDays((long) Math.ceil(weeks * ChronoUnit.WEEKS.getDuration().toDays() - 1e-9));
        return Optional.of(new Remeasure(from, "At " + Shown.change(course.instrument(), trend.slope()) + " a week, a change of "
                + Shown.amount(error.get()) + " takes " + Shown.amount(Math.ceil(weeks * 10) / 10) + " weeks: measuring again tells nothing before "
                + Dates.shown(from) + "."));
    }

    private static double points(Threshold threshold, MeasureCourse course) {
        return threshold.points(course.points().get(0).value());
    }
}
