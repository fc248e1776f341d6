package org.steadwork.exercise.dayplan;

import java.util.List;

/**
 * A working day with its breaks and what is done in each.
 *
 * @param stops   every break laid and every rest that stood already, in order
 * @param spells  the stretches between them that are sat through, in order
 * @param tooLate exercises whose sessions stand further apart than wanted, because fixed times are in the way
 */
public record PlannedDay(List<Stop> stops, List<Spell> spells, List<Late> tooLate) {

    /**
     * A break.
     *
     * @param to      when work goes on
     * @param fixed   true for a rest that stood already: it interrupts nothing
     * @param seconds of exercise in it
     */
    public record Stop(int from, int to, boolean fixed, List<String> exercises, double seconds) {
    }

    /** Sitting without a break. */
    public record Spell(int from, int to, boolean tooLong) {

        public int minutes() {
            return to - from;
        }
    }

    /** @param minutes longest time between two sessions, or from the start or to the end of the day */
    public record Late(String exercise, int minutes) {
    }

    /** Breaks that interrupt work. */
    public int interruptions() {
        return (int) stops.stream().filter(s -> !s.fixed()).count();
    }

    /** Whole minutes that the fullest break takes for its exercises; 0 when there is none. */
    int breakMinutesNeeded() {
        return (int) Math.ceil(stops.stream().filter(s -> !s.fixed()).mapToDouble(Stop::seconds).max().orElse(0) / 60);
    }

    /** Longest sitting spell in minutes; 0 for a day without one. */
    public int longestSpell() {
        return spells.stream().mapToInt(Spell::minutes).max().orElse(0);
    }

    /** Seconds of exercise in the whole day. */
    public double secondsOfExercise() {
        return stops.stream().mapToDouble(Stop::seconds).sum();
    }

    public int sessions(String exercise) {
        return (int) stops.stream().filter(s -> s.exercises().contains(exercise)).count();
    }
}
