package org.steadwork.exercise.dayplan;

/**
 * An exercise to be done every so many minutes of the working day.
 *
 * @param everyMinutes longest time from one session to the next, [15, 720]
 * @param seconds      of one session, (0, 3600]
 */
public record DeskExercise(String key, int everyMinutes, double seconds) {

    public DeskExercise {
        if (!(everyMinutes >= 15 && everyMinutes <= 720)) {
            throw new IllegalArgumentException("Sessions come every 15 to 720 minutes, but was " + everyMinutes);
        }
        if (!(seconds > 0 && seconds <= 3600)) {
            throw new IllegalArgumentException("A session lasts more than 0 and at most 3600 s, but was " + seconds);
        }
    }
}
