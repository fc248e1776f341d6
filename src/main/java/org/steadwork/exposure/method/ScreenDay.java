package org.steadwork.exposure.method;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The screen runs of one working day: how long screen work goes on between breaks that reset it.
 *
 * <p>A break resets when it lasts at least five minutes off the screen; a shorter pause does not reset and is not counted as screen time.
 * Bands are a proposal; HSE advises 5 to 10 minutes after 50 to 60 minutes of screen work.
 */
public final class ScreenDay {

    /** A break of at least this many minutes resets the run (proposal). */
    public static final int RESETS_AFTER_MINUTES = 5;
    private static final int GREEN_UP_TO = 60;
    private static final int AMBER_UP_TO = 90;

    /** A time off the screen within the day. */
    public record Off(LocalTime from, LocalTime to) {

        public Off {
            if (!from.isBefore(to)) {
                throw new IllegalArgumentException("A break ends after it begins, but was " + from + " to " + to);
            }
        }

        long minutes() {
            return Duration.between(from, to).toMinutes();
        }
    }

    /** How the longest run stands. */
    public enum Band {
        IN_RANGE, NEAR_THE_EDGE, OUT_OF_RANGE
    }

    /** The runs in minutes in the order of the day. */
    public record Result(List<Long> runs) {

        public long longest() {
            return runs.stream().mapToLong(Long::longValue).max().orElse(0);
        }

        public long total() {
            return runs.stream().mapToLong(Long::longValue).sum();
        }

        public Band band() {
            return longest() <= GREEN_UP_TO ? Band.IN_RANGE : longest() <= AMBER_UP_TO ? Band.NEAR_THE_EDGE : Band.OUT_OF_RANGE;
        }
    }

    private ScreenDay() {
    }

    /** Computes the runs; breaks stand in order, within the day and apart from one another, or they are refused. */
    public static Result of(LocalTime start, LocalTime end, List<Off> breaks) {
        if (!start.isBefore(end)) {
            throw new IllegalArgumentException("A day ends after it begins, but was " + start + " to " + end);
        }
        List<Long> runs = new ArrayList<>();
        long run = 0;
        LocalTime at = start;
        for (Off off : breaks) {
            if (off.from().isBefore(at) || off.to().isAfter(end)) {
                throw new IllegalArgumentException("Breaks stand in order within the day; " + off.from() + " to " + off.to() + " does not");
            }
            run += Duration.between(at, off.from()).toMinutes();
            if (off.minutes() >= RESETS_AFTER_MINUTES) {
                runs.add(run);
                run = 0;
            }
            at = off.to();
        }
        runs.add(run + Duration.between(at, end).toMinutes());
        return new Result(runs.stream().filter(minutes -> minutes > 0).toList());
    }

    /** Micro-pauses of {@code pauseSeconds} every {@code everyMinutes} within a time, none at its end; returns minutes of pause. */
    public static double microPauseMinutes(int minutes, int everyMinutes, int pauseSeconds) {
        Checks.within("Time", minutes, 1, 1440);
        Checks.within("Interval", everyMinutes, 1, 1440);
        return ((minutes + everyMinutes - 1) / everyMinutes - 1) * pauseSeconds / 60.0;
    }

    /**
     * Minutes of standing or light walking to build up to: first and later goal, pro rata of a 480-minute day.
     * Source: Buckley et al. 2015, British Journal of Sports Medicine (expert statement, cardiometabolic reasoning, not pain).
     */
    public static double[] standingGoals(int dayMinutes) {
        Checks.within("Working day", dayMinutes, 1, 1440);
        return new double[] {120.0 * dayMinutes / 480, 240.0 * dayMinutes / 480};
    }
}
