package org.steadwork.exposure.method;

/**
 * One two-handed lift at one end of its path.
 *
 * @param reach horizontal distance from mid-ankles to mid-knuckles, cm in [0, 100]
 * @param height floor to mid-knuckles, cm in [0, 250]
 * @param travel vertical travel, absolute, cm in [0, 250]
 * @param asymmetryDegrees load off the mid-sagittal line, degrees in [0, 180]
 * @param perMinute lifts per minute averaged over 15 min, [0, 60]
 */
public record Lift(double reach, double height, double travel, double asymmetryDegrees, double perMinute, LiftingDuration duration,
        Coupling coupling) {

    public Lift {
        Checks.within("Reach", reach, 0, 100, "cm");
        Checks.within("Height", height, 0, 250, "cm");
        Checks.within("Travel", travel, 0, 250, "cm");
        Checks.within("Asymmetry", asymmetryDegrees, 0, 180, "degrees");
        Checks.within("Lifts per minute", perMinute, 0, 60, "/min");
    }

    boolean handsLow() {
        return height < LiftingEquation.KNUCKLE_HEIGHT;
    }
}
