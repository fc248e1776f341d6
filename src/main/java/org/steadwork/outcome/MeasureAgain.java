package org.steadwork.outcome;

import java.time.LocalDate;
import java.util.Optional;
import org.steadwork.outcome.scoring.Remeasure;
import org.steadwork.outcome.scoring.Threshold;
import org.steadwork.web.Dates;

/** Says from when on measuring again could tell anything: when the change at the pace so far exceeds measurement error. */
final class MeasureAgain {

    private MeasureAgain() {
    }

    /** Returns the sentence for a course; blank for a screen and for a course without a score or a known error. */
    static String words(MeasureCourse course) {
        if (!course.instrument().outcome() || course.points().isEmpty() || course.error().isEmpty()) {
            return "";
        }
        double error = points(course.error().get(), course);
        if (!(error > 0)) {
            return "";
        }
        if (course.trend().isEmpty()) {
            return "The pace is known from three scores on; until then the schedule says when: " + course.instrument().scheduleWords() + ".";
        }
        double weekly = course.trend().get().slope();
        Optional<LocalDate> from = Remeasure.from(course.latest().orElseThrow().on(), error, weekly);
        String amount = Shown.amount(error);
        return from.map(day -> "At " + Shown.change(course.instrument(), weekly) + " a week since the start, a change of " + amount
                + " or more is not to be expected before " + Dates.shown(day) + "; measuring sooner would tell nothing.")
                .orElse("At the pace so far a change of " + amount + " is not to be expected within a year: measuring again tells something only after"
                        + " the plan changes.");
    }

    private static double points(Threshold threshold, MeasureCourse course) {
        return threshold.points(course.points().get(0).value());
    }
}
