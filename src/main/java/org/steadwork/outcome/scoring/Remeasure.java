package org.steadwork.outcome.scoring;

import java.time.LocalDate;
import java.util.Optional;

/** From when on measuring again could tell anything: sooner, even a change at the expected pace would drown in measurement error. */
public final class Remeasure {

    private static final double DAYS_A_WEEK = 7;
    private static final double MOST_DAYS = 365;

    private Remeasure() {
    }

    /**
     * Returns the first day on which a change at the given pace is as large as the error.
     *
     * @param last the day of the last score
     * @param error more than measurement error from here on, in points, above 0
     * @param pointsAWeek expected change in points a week; the sign does not matter. At 0, or so slow that it takes over a year, empty
     * Source: Curr Phys Med Rehabil Rep 2015 (the question); the arithmetic is ours.
     */
    public static Optional<LocalDate> from(LocalDate last, double error, double pointsAWeek) {
        if (!(error > 0 && error < Double.POSITIVE_INFINITY) || !Double.isFinite(pointsAWeek)) {
            throw new IllegalArgumentException("The error must be above 0 and the pace a number, but these are " + error + " and " + pointsAWeek);
        }
        double days = Math.ceil(error / Math.abs(pointsAWeek) * DAYS_A_WEEK - ChangeVerdict.ROUNDING);
        return days <= MOST_DAYS ? Optional.of(last.plusDays((long) days)) : Optional.empty();
    }
}
