package org.steadwork.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.steadwork.outcome.OwnActivity;

/** Own activities in words, as a note says them. */
final class OwnLines {

    private OwnLines() {
    }

    /** Says the activities with the ratings of a day, or that they are not due when they were not asked. */
    static String of(List<OwnActivity> named, Map<LocalDate, Map<Long, Integer>> rated, LocalDate day, boolean asked) {
        if (!asked) {
            return "Own activities: not due.";
        }
        if (named.isEmpty()) {
            return "Own activities: not entered.";
        }
        List<String> lines = new ArrayList<>();
        for (OwnActivity activity : named) {
            Integer rating = rated.getOrDefault(day, Map.of()).get(activity.id());
            lines.add(activity.words() + " " + (rating == null ? "not entered" : rating) + " (" + before(activity, rated, day) + ")");
        }
        return "Own activities (0 unable, 10 as before): " + String.join("; ", lines) + ".";
    }

    /** Says what an activity was rated before a day, the first and the last time. */
    static String before(OwnActivity activity, Map<LocalDate, Map<Long, Integer>> rated, LocalDate day) {
        List<Integer> earlier = rated.entrySet().stream().filter(entry -> entry.getKey().isBefore(day))
                .map(entry -> entry.getValue().get(activity.id())).filter(rating -> rating != null).toList();
        if (earlier.isEmpty()) {
            return "not rated before";
        }
        return "first " + earlier.get(0) + (earlier.size() > 1 ? ", last " + earlier.get(earlier.size() - 1) : "");
    }
}
