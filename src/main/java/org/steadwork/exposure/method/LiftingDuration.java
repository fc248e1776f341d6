package org.steadwork.exposure.method;

/** How long lifting goes on, with the recovery on light work that each class asks for afterwards. */
public enum LiftingDuration {
    SHORT, MODERATE, LONG;

    /** Recovery after short lifting, as a multiple of the work time; the manual of 1994, from memory (study notes say 1.0). */
    public static final double SHORT_RECOVERY = 1.2;
    private static final double MODERATE_RECOVERY = 0.3;
    private static final double ROUNDING = 1e-9;

    /**
     * Finds the duration class of one spell of lifting and the light work after it.
     *
     * @param workMinutes lifting in (0, 480] min
     * @param recoveryMinutes light work afterwards, 0 or more min
     * @param shortRecovery multiple of the work time that a short spell needs, at least 0; usually {@link #SHORT_RECOVERY}
     * @return the class; a spell whose recovery is too short falls into the next
     *     Source: DHHS (NIOSH) 94-110 (1994, rev. 2021), duration categories.
     */
    public static LiftingDuration of(double workMinutes, double recoveryMinutes, double shortRecovery) {
        Checks.within("Lifting time", workMinutes, Double.MIN_VALUE, 480, "min");
        Checks.within("Recovery time", recoveryMinutes, 0, 1440, "min");
        Checks.within("Recovery factor", shortRecovery, 0, 10, "");
        if (workMinutes <= 60 && recoveryMinutes + ROUNDING >= shortRecovery * workMinutes) {
            return SHORT;
        }
        return workMinutes <= 120 && recoveryMinutes + ROUNDING >= MODERATE_RECOVERY * workMinutes ? MODERATE : LONG;
    }

    /** Lifts per minute over 15 minutes of lifting in bursts: {@code rate × minutes / 15}; from memory. */
    public static double burstFrequency(double liftsPerMinute, double minutes) {
        Checks.within("Lifts per minute", liftsPerMinute, 0, 60, "/min");
        Checks.within("Burst", minutes, 0, 15, "min");
        return liftsPerMinute * minutes / 15;
    }
}
