package org.steadwork.diary.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Looks for the free times nearest to a wanted one. */
public final class SlotSearch {

    /** A time that is free. */
    public record Slot(LocalDate day, int start) {
    }

    private SlotSearch() {
    }

    /**
     * Finds free starts, the nearest day first and on a day the nearest time.
     *
     * @param free    what is free on each day
     * @param minutes how long is needed
     * @param step    starts lie at the beginning of a free span and at full multiples of so many minutes
     * @param most    how many at most
     * @param aDay    how many at most of one day
     */
    public static List<Slot> nearest(Map<LocalDate, List<Span>> free, int minutes, int step, LocalDate wanted, int wantedStart, int most, int aDay) {
        Comparator<LocalDate> near = Comparator.<LocalDate>comparingLong(day -> Math.abs(day.toEpochDay() - wanted.toEpochDay()))
                .thenComparing(Comparator.naturalOrder());
        List<Slot> found = new ArrayList<>();
        for (LocalDate day : free.keySet().stream().sorted(near).toList()) {
            starts(free.get(day), minutes, step).stream()
                    .sorted(Comparator.<Integer>comparingInt(start -> Math.abs(start - wantedStart)).thenComparing(Comparator.naturalOrder()))
                    .limit(Math.min(aDay, most - found.size())).map(start -> new Slot(day, start)).forEach(found::add);
            if (found.size() >= most) {
                break;
            }
        }
        return found;
    }

    static List<Integer> starts(List<Span> free, int minutes, int step) {
        List<Integer> starts = new ArrayList<>();
        for (Span span : free) {
            for (int start = span.from(); start + minutes <= span.to(); start = (start / step + 1) * step) {
                starts.add(start);
            }
        }
        return starts;
    }
}
