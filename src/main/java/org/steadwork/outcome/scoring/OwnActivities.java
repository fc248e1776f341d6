package org.steadwork.outcome.scoring;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Ratings of activities that the person named, 0 (unable) to 10 (as before): the patient-specific functional scale.
 * Two times are compared on the activities rated at both, and never otherwise.
 *
 * @param earlierMean mean of the shared activities at the earlier time, 0 to 10
 * @param laterMean mean of the same activities at the later time
 * @param shared the keys of the activities compared
 * Source: Stratford et al. 1995 (scale); comparing only shared activities, and at least two, is a rule of ours.
 */
public record OwnActivities(double earlierMean, double laterMean, List<String> shared) {

    public static final int FEWEST_SHARED = 2;

    /** Points by which a single activity must move to be more than error (MDC90; Stratford et al. 1995, from memory). */
    public static final double SINGLE_ACTIVITY_ERROR = 3;

    /** Returns the mean of the rated activities; empty when none is rated. A rating outside 0 to 10 is refused. */
    public static Optional<Double> mean(Map<String, Integer> ratings) {
        ratings.forEach(OwnActivities::check);
        return ratings.values().stream().filter(Objects::nonNull).mapToInt(Integer::intValue).average().stream().boxed().findFirst();
    }

    /** Compares two times; empty when fewer than two activities were rated at both. */
    public static Optional<OwnActivities> compare(Map<String, Integer> earlier, Map<String, Integer> later) {
        Map<String, Integer> first = new LinkedHashMap<>();
        Map<String, Integer> second = new LinkedHashMap<>();
        earlier.forEach((activity, rating) -> {
            if (rating != null && later.get(activity) != null) {
                first.put(activity, rating);
                second.put(activity, later.get(activity));
            }
        });
        if (first.size() < FEWEST_SHARED) {
            return Optional.empty();
        }
        return Optional.of(new OwnActivities(mean(first).orElseThrow(), mean(second).orElseThrow(), List.copyOf(first.keySet())));
    }

    /** Judges the change of one activity: against error only, because no important amount is known for a single one. */
    public static ChangeVerdict single(int earlier, int later) {
        return ChangeVerdict.of(earlier, later, Direction.HIGHER_BETTER, java.util.OptionalDouble.of(SINGLE_ACTIVITY_ERROR),
                java.util.OptionalDouble.empty());
    }

    private static void check(String activity, Integer rating) {
        if (rating != null && (rating < 0 || rating > 10)) {
            throw new IllegalArgumentException("The activity " + activity + " must be rated from 0 to 10, but is " + rating);
        }
    }
}
