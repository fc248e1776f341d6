package org.steadwork.exercise.dayplan;

/**
 * The working week that doses are laid on.
 *
 * @param hours hours worked on a day, (0, 24]
 * @param days  days worked in a week, [1, 7]
 */
public record WorkingDay(double hours, int days) {

    /** Eight hours, five days: what the published arithmetic assumes and what counts when nothing else is known. */
    public static final WorkingDay USUAL = new WorkingDay(8, 5);

    public WorkingDay {
        if (!(hours > 0 && hours <= 24)) {
            throw new IllegalArgumentException("A working day has more than 0 and at most 24 hours, but was " + hours);
        }
        if (!(days >= 1 && days <= 7)) {
            throw new IllegalArgumentException("A working week has 1 to 7 days, but was " + days);
        }
    }

    /** Sessions of a day when one is done every so many hours, to the nearest whole: 8 h at every 1.5 h are 5, 7.5 h at every 2 h are 4. */
    public int sessionsEvery(double everyHours) {
        if (!(everyHours > 0)) {
            throw new IllegalArgumentException("Sessions come every more than 0 hours, but was " + everyHours);
        }
        return (int) Math.round(hours / everyHours);
    }

    /** Sessions on a day that a dose asks for at least: the lowest times a day, the longest time between sessions. */
    public int sessionsADay(Dose dose) {
        if (dose.everyHours() != null) {
            return sessionsEvery(dose.everyHours().high());
        }
        return dose.timesADay() == null ? 1 : (int) dose.timesADay().low();
    }

    /**
     * Sessions in a week that a dose asks for at least; at the desk only on days worked.
     * Source: arithmetic; common practice, no source.
     */
    public int sessionsAWeek(Dose dose) {
        int daysDone = (int) dose.daysAWeek().low();
        return sessionsADay(dose) * (dose.isAtTheDesk() ? Math.min(days, daysDone) : daysDone);
    }

    /** Minutes on a day of the dose, with sessions as {@link #sessionsADay}; {@code tempo} as in {@link Dose#secondsASession(double)}. */
    public double minutesADay(Dose dose, double tempo) {
        return sessionsADay(dose) * dose.secondsASession(tempo) / 60;
    }

    /** Share of the working day that minutes take, [0, …); 0.1 is a tenth. */
    public double share(double minutes) {
        return minutes / (hours * 60);
    }
}
