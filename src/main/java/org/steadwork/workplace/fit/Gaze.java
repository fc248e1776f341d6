package org.steadwork.workplace.fit;

/** Angles between the eye and what it looks at. Lengths in mm, angles in degrees unless said; plane trigonometry. */
public final class Gaze {

    private Gaze() {
    }

    /** Returns the angle below the horizontal at the eye, positive downward. */
    public static double belowHorizontal(double dropMm, double distanceMm) {
        return Math.toDegrees(Math.atan(dropMm / requireDistance(distanceMm)));
    }

    /** Returns the angle to the side of straight ahead, positive to the side of the offset. */
    public static double aside(double offsetMm, double distanceMm) {
        return Math.toDegrees(Math.atan(offsetMm / requireDistance(distanceMm)));
    }

    /** Returns the offset to the side at which a point is seen at an angle, in mm; the angle in [0, 90). */
    public static double offset(double distanceMm, double degrees) {
        if (!(degrees >= 0 && degrees < 90)) {
            throw new IllegalArgumentException("An angle to the side must be from 0 to 90 degrees, but was " + degrees);
        }
        return requireDistance(distanceMm) * Math.tan(Math.toRadians(degrees));
    }

    /**
     * Returns the angle under which a character is seen, in minutes of arc: 2·atan(height ÷ (2·distance))·60·180 ÷ π.
     * Source: definition of the visual angle; character sizes are quoted from ISO 9241-3 in the criteria.
     */
    public static double minutesOfArc(double heightMm, double distanceMm) {
        if (!(heightMm > 0)) {
            throw new IllegalArgumentException("A character must be higher than 0 mm, but was " + heightMm);
        }
        return Math.toDegrees(2 * Math.atan(heightMm / (2 * requireDistance(distanceMm)))) * 60;
    }

    /** Returns the height of a character seen under an angle in minutes of arc, in mm. */
    public static double characterHeight(double minutesOfArc, double distanceMm) {
        if (!(minutesOfArc > 0 && minutesOfArc < 5400)) {
            throw new IllegalArgumentException("A visual angle must be more than 0 minutes of arc, but was " + minutesOfArc);
        }
        return 2 * requireDistance(distanceMm) * Math.tan(Math.toRadians(minutesOfArc / 60) / 2);
    }

    private static double requireDistance(double distanceMm) {
        if (!(distanceMm > 0 && distanceMm < 100_000)) {
            throw new IllegalArgumentException("A viewing distance must be more than 0 mm, but was " + distanceMm);
        }
        return distanceMm;
    }
}
