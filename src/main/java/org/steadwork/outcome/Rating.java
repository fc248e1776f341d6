package org.steadwork.outcome;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.RatingAgreement;
import org.steadwork.web.Dates;

/**
 * The patient's own rating of the whole change, beside a measure: what they say, and whether the two tell the same.
 *
 * @param disagreement a sentence when they do not, blank when they do or when the rating is too far from the score in time
 */
public record Rating(MeasureCourse course, MeasureCourse.Point point, String disagreement) {

    /** How far a rating may lie from a score to be held beside it (a rule of ours). */
    private static final long DAYS_APART = 14;

    /** Returns the latest rating of a case held against a measure; empty when the patient was not asked. */
    static Optional<Rating> beside(MeasureCourse measure, List<MeasureCourse> all) {
        return all.stream().filter(course -> course.instrument().use() == Instrument.Use.CHANGE_RATING && course.latest().isPresent())
                .max(Comparator.comparing(course -> course.latest().orElseThrow().on()))
                .map(course -> new Rating(course, course.latest().orElseThrow(), disagreement(measure, course)));
    }

    private static String disagreement(MeasureCourse measure, MeasureCourse rating) {
        MeasureCourse.Point rated = rating.latest().orElseThrow();
        if (measure.sinceFirst().isEmpty()
                || Math.abs(ChronoUnit.DAYS.between(measure.latest().orElseThrow().on(), rated.on())) > DAYS_APART) {
            return "";
        }
        return RatingAgreement.of(measure.sinceFirst().get(), rating.instrument(), rated.value()).prompt();
    }

    /** Says the rating, for example +4 (-7 to +7), on 18 Mar 2026. */
    public String words() {
        return Shown.change(course.instrument(), point.value()) + " on the scale from " + Shown.amount(course.instrument().lowest()) + " to +"
                + Shown.amount(course.instrument().highest()) + ", " + Dates.shown(point.on());
    }
}
