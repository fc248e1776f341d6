package org.steadwork.exercise.dayplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Lays breaks and exercises on a working day.
 *
 * <p>First the breaks: of all ways to place them on the grid, the one with the fewest minutes sat beyond the longest spell, then
 * the fewest minutes by which an exercise would come later than wanted, then the fewest interruptions, then the most even spells.
 * Then each exercise, the longest first, in as few of those breaks and rests as keep it in time, and where that leaves a choice,
 * where least is done already. When the exercises of one break need longer than a break lasts, all are laid anew with breaks of
 * so many whole minutes.
 *
 * Source: arithmetic; that exercises ride on breaks: common practice, no source.
 */
public final class DayPlanner {

    /** A place where work may stop: a break on the grid or a rest that stands already. */
    private record Place(int from, int to, boolean fixed) {
    }

    private final DayFrame frame;
    private final List<DeskExercise> exercises;
    private final int breakMinutes;

    private DayPlanner(DayFrame frame, List<DeskExercise> exercises, int breakMinutes) {
        this.frame = frame;
        this.exercises = exercises;
        this.breakMinutes = breakMinutes;
    }

    public static PlannedDay plan(DayFrame frame, List<DeskExercise> exercises) {
        PlannedDay day = new DayPlanner(frame, exercises, frame.breakMinutes()).plan();
        int needed = day.breakMinutesNeeded();
        for (int minutes = frame.breakMinutes(); needed > minutes; needed = day.breakMinutesNeeded()) {
            minutes = needed;
            day = new DayPlanner(frame, exercises, minutes).plan();
        }
        return day;
    }

    private PlannedDay plan() {
        List<Place> places = places();
        int soonest = exercises.stream().mapToInt(DeskExercise::everyMinutes).min().orElse(Integer.MAX_VALUE);
        List<Place> stops = Chain.cheapest(places.size(), i -> places.get(i).fixed(), (before, after) -> {
            Place last = before < 0 ? null : places.get(before);
            Place next = after == places.size() ? null : places.get(after);
            int sittingFrom = last == null ? frame.from() : last.to();
            int sittingTo = next == null ? frame.to() : next.from();
            if (sittingTo < sittingFrom) {
                return null;
            }
            long run = sittingTo - sittingFrom;
            return new long[] {frame.satTooLong(sittingFrom, sittingTo), beyond(last, next, soonest), next == null || next.fixed() ? 0 : 1, run * run};
        }).stream().map(places::get).toList();
        List<List<String>> done = new ArrayList<>();
        double[] seconds = new double[stops.size()];
        stops.forEach(stop -> done.add(new ArrayList<>()));
        List<PlannedDay.Late> late = new ArrayList<>();
        for (DeskExercise exercise : exercises.stream().sorted(Comparator.comparingDouble(DeskExercise::seconds).reversed()).toList()) {
            List<Integer> sessions = sessions(exercise, stops, seconds);
            for (int session : sessions) {
                done.get(session).add(exercise.key());
                seconds[session] += exercise.seconds();
            }
            int longest = longestGap(stops, sessions);
            if (longest > exercise.everyMinutes()) {
                late.add(new PlannedDay.Late(exercise.key(), longest));
            }
        }
        return new PlannedDay(stopsWith(stops, done, seconds), spells(stops), late);
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (int from = frame.from() + frame.grid(); from + breakMinutes < frame.to(); from += frame.grid()) {
            if (frame.isFree(from, from + breakMinutes)) {
                places.add(new Place(from, from + breakMinutes, false));
            }
        }
        frame.blocks().stream().filter(b -> b.kind() == FixedBlock.Kind.REST).forEach(b -> places.add(new Place(b.from(), b.to(), true)));
        places.sort(Comparator.comparingInt(Place::from));
        return places;
    }

    private List<Integer> sessions(DeskExercise exercise, List<Place> stops, double[] seconds) {
        return Chain.cheapest(stops.size(), i -> false, (before, after) -> {
            Place last = before < 0 ? null : stops.get(before);
            Place next = after == stops.size() ? null : stops.get(after);
            long load = next == null ? 0 : Math.round(seconds[after] * exercise.seconds());
            return new long[] {beyond(last, next, exercise.everyMinutes()), next == null ? 0 : 1, load};
        });
    }

    private long beyond(Place last, Place next, int everyMinutes) {
        return Math.max(0, gap(last, next) - everyMinutes);
    }

    /** Minutes of work from one session to the next; a rest is no work. */
    private int gap(Place last, Place next) {
        int since = last == null ? frame.from() : last.fixed() ? last.to() : last.from();
        int until = next == null ? frame.to() : next.from();
        int rests = frame.blocks().stream().filter(b -> b.kind() == FixedBlock.Kind.REST && b.from() >= since && b.to() <= until)
                .mapToInt(b -> b.to() - b.from()).sum();
        return until - since - rests;
    }

    private int longestGap(List<Place> stops, List<Integer> sessions) {
        int longest = 0;
        Place last = null;
        for (int session : sessions) {
            longest = Math.max(longest, gap(last, stops.get(session)));
            last = stops.get(session);
        }
        return Math.max(longest, gap(last, null));
    }

    private List<PlannedDay.Stop> stopsWith(List<Place> stops, List<List<String>> done, double[] seconds) {
        List<PlannedDay.Stop> planned = new ArrayList<>();
        for (int i = 0; i < stops.size(); i++) {
            Place stop = stops.get(i);
            planned.add(new PlannedDay.Stop(stop.from(), stop.to(), stop.fixed(), List.copyOf(done.get(i)), seconds[i]));
        }
        return planned;
    }

    /** What is sat through between stops, rests and fixed times on the feet. */
    private List<PlannedDay.Spell> spells(List<Place> stops) {
        List<int[]> ends = new ArrayList<>();
        stops.forEach(s -> ends.add(new int[] {s.from(), s.to()}));
        frame.blocks().stream().filter(b -> b.kind() == FixedBlock.Kind.ON_FEET).forEach(b -> ends.add(new int[] {b.from(), b.to()}));
        ends.sort(Comparator.comparingInt(e -> e[0]));
        ends.add(new int[] {frame.to(), frame.to()});
        List<PlannedDay.Spell> spells = new ArrayList<>();
        int since = frame.from();
        for (int[] end : ends) {
            if (end[0] > since) {
                spells.add(new PlannedDay.Spell(since, end[0], end[0] - since > frame.longestSpell()));
            }
            since = end[1];
        }
        return spells;
    }
}
