package org.steadwork.outcome;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.web.Dates;

/**
 * The patient's own rating of the whole change, beside a measure: what they say, and whether the two tell the same.
 *
 * @param disagreement a sentence when they do not, blank when they do or when the rating is too far from the score in time
 */
public record Rating(MeasureCourse course, MeasureCourse.Point point, String disagreement) {

    /** How far a rating may lie from a score to be held beside it (a rule of ours). */
    private static final long DAYS_APART = 14;
    private static final String KEY = "groc";
    /** Under 2 either way counts as unchanged on both scales (one common split, from memory). */
    private static final double UNCHANGED_UNDER = 2;

    /** Returns the latest rating of a case held against a measure; empty when the patient was not asked. */
    static Optional<Rating> beside(MeasureCourse measure, List<MeasureCourse> all) {
        return all.stream().filter(course -> course.instrument().key().startsWith(KEY) && course.latest().isPresent())
                .max(java.util.Comparator.comparing(course -> course.latest().orElseThrow().on()))
                .map(course -> new Rating(course, course.latest().orElseThrow(), disagreement(measure, course.latest().orElseThrow())));
    }

    private static String disagreement(MeasureCourse measure, MeasureCourse.Point rated) {
        if (measure.sinceFirst().isEmpty()
                || Math.abs(ChronoUnit.DAYS.between(measure.latest().orElseThrow().on(), rated.on())) > DAYS_APART) {
            return "";
        }
        int scale = direction(measure.sinceFirst().get().kind());
        int said = rated.value() >= UNCHANGED_UNDER ? 1 : rated.value() <= -UNCHANGED_UNDER ? -1 : 0;
        if (scale == said || scale == UNDECIDED) {
            return "";
        }
        return "The score says " + words(scale) + ", the patient says " + words(said) + ". Talk about it before deciding.";
    }

    private static final int UNDECIDED = 9;

    private static int direction(ChangeVerdict.Kind kind) {
        return switch (kind) {
            case WORSE -> -1;
            case NO_REAL_CHANGE -> 0;
            case REAL_NOT_YET_IMPORTANT, IMPORTANT, REAL_IMPORTANCE_UNKNOWN, BEYOND_IMPORTANCE_ERROR_UNKNOWN -> 1;
            case POSSIBLY_IMPORTANT, NOT_JUDGED -> UNDECIDED;
        };
    }

    private static String words(int direction) {
        return direction < 0 ? "worse" : direction > 0 ? "better" : "unchanged";
    }

    /** Says the rating, for example +4 (-7 to +7), on 18 Mar 2026. */
    public String words() {
        return Shown.change(course.instrument(), point.value()) + " on the scale from " + Shown.amount(course.instrument().lowest()) + " to +"
                + Shown.amount(course.instrument().highest()) + ", " + Dates.shown(point.on());
    }
}
