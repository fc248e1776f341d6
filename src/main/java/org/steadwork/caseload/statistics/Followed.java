package org.steadwork.caseload.statistics;

/**
 * How long one person was followed, and whether what is waited for happened then or following ended without it.
 *
 * @param time from the origin, in the unit of the whole cohort (days for time to return), in [0, infinity); outside {@link IllegalArgumentException}
 * @param happened true when the event came at that time; false when following ended (last contact, end of employment, day of the count)
 */
public record Followed(double time, boolean happened) {

    public Followed {
        if (!(time >= 0 && time < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("A time must be 0 or more and finite, but was " + time);
        }
    }
}
