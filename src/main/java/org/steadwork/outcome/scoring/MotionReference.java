package org.steadwork.outcome.scoring;

/**
 * One published value of a motion. Round reference figures are not means: healthy people fall short of them.
 *
 * @param by whose value it is
 * @param low degrees, above 0; {@code high} is the same unless a range or two sides are printed
 * @param atLeast true when the source prints "at least"
 * @param sd standard deviation in degrees, NaN when none is printed
 * @param tag how sure the figure is: S seen in the source, M from memory
 */
public record MotionReference(String by, double low, double high, boolean atLeast, double sd, String population, String source, String tag) {

    public MotionReference {
        if (!(low > 0 && high >= low && high <= 360)) {
            throw new IllegalArgumentException("A reference lies above 0 and up to 360 degrees, but is " + low + " to " + high);
        }
    }

    /** Returns the value as printed, for example 180°, ≥ 60° or 20–30°. */
    public String shown() {
        String range = low == high ? Plain.number(low) : Plain.number(low) + "\u2013" + Plain.number(high);
        return (atLeast ? "\u2265\u00a0" : "") + range + "\u00b0" + (Double.isNaN(sd) ? "" : " (SD " + Plain.number(sd) + "\u00b0)");
    }
}
