package org.steadwork.casefile.workplan;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A week's minutes laid on its working days: equal days rounded down to 15 minutes, the rest on the last day, no day over the
 * normal day. A plan that starts at half or less keeps the middle working day free as long as the other days can carry the week.
 *
 * <p>Source: common practice, no published source. That the rest day ends when the hours no longer fit is a rule of ours.
 */
public final class WeekSplit {

    private static final int STEP_MINUTES = 15;

    private WeekSplit() {
    }

    /**
     * Splits one week of a plan that begins on a Monday.
     *
     * @param workingDays the person's working days, at least one
     * @return minutes a working day in calendar order; 0 for the rest day
     */
    public static Map<DayOfWeek, Integer> of(GradedReturn plan, int week, Collection<DayOfWeek> workingDays) {
        return of(plan, week, workingDays, DayOfWeek.MONDAY);
    }

    /** Splits one week of a plan whose weeks begin on a day; the days stand in the order from that day on. */
    public static Map<DayOfWeek, Integer> of(GradedReturn plan, int week, Collection<DayOfWeek> workingDays, DayOfWeek firstDay) {
        List<DayOfWeek> days = workingDays.stream().distinct()
                .sorted(Comparator.comparingInt(day -> Math.floorMod(day.getValue() - firstDay.getValue(), 7))).toList();
        if (days.isEmpty()) {
            throw new IllegalArgumentException("A week needs at least one working day");
        }
        int minutes = plan.minutesOfWeek(week);
        int normalDay = upToStep(plan.normalWeekMinutes(), days.size());
        List<DayOfWeek> used = new ArrayList<>(days);
        if (week <= plan.weeks() && plan.startPercent() <= 50 && days.size() >= 3 && minutes <= normalDay * (days.size() - 1)) {
            used.remove(days.size() / 2);
        }
        Map<DayOfWeek, Integer> split = new LinkedHashMap<>();
        days.forEach(day -> split.put(day, 0));
        int equal = minutes / used.size() / STEP_MINUTES * STEP_MINUTES;
        used.forEach(day -> split.put(day, equal));
        layTheRest(split, used, minutes - equal * used.size(), normalDay);
        return split;
    }

    // From the last day backwards, so that no day passes the normal one.
    private static void layTheRest(Map<DayOfWeek, Integer> split, List<DayOfWeek> used, int rest, int normalDay) {
        int left = rest;
        for (int i = used.size() - 1; i >= 0 && left > 0; i--) {
            int room = Math.min(left, normalDay - split.get(used.get(i)));
            split.merge(used.get(i), room, Integer::sum);
            left -= room;
        }
    }

    // The normal day is the even share, taken up to the minute so that the normal week always fits.
    private static int upToStep(int weekMinutes, int days) {
        return (weekMinutes + days - 1) / days;
    }
}
