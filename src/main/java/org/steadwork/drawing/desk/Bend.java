package org.steadwork.drawing.desk;

/**
 * How far head and back give way to the work, in degrees, and the shoulders, in mm.
 *
 * @param slump  rounding of the upper back, in [0, 20]
 * @param head   bend of the head against the upright; negative: the chin is lifted
 * @param neck   the part of it that the neck takes
 * @param shrug  lift of the shoulders, in mm
 */
record Bend(double slump, double head, double neck, double shrug) {

    /** The eyes alone turn this far down; what is more, head and neck take. Common practice, no source. */
    private static final double EYES_ALONE = 17;
    /** Gaze to the screen below which progressive lenses make the chin lift. Common practice, no source. */
    private static final double LENS_WANTS = 22;

    static Bend none() {
        return new Bend(0, 0, 0, 0);
    }

    static Bend of(Lengths b, Deviations d, Legs legs, Glasses glasses, boolean standing, boolean present) {
        double flex = Math.max(0, d.gaze - EYES_ALONE);
        double lift = present && glasses == Glasses.PROGRESSIVE && d.gaze < LENS_WANTS ? Math.min(LENS_WANTS - d.gaze, LENS_WANTS) : 0;
        double slump = flex > 8 ? Math.min(20, .55 * flex) : 0;
        if (standing && present && d.elbow < -30) {
            slump = Math.max(slump, Math.min(16, (-d.elbow - 20) * .16));
        }
        if (!standing && legs.backGap() > 0) {
            slump = Math.max(slump, 9);
        }
        double tilt = flex - slump * .6 - lift;
        return new Bend(slump, slump + tilt, tilt * .45, present ? shrug(b, d) : 0);
    }

    private static double shrug(Lengths b, Deviations d) {
        if (d.elbow <= 10 && !d.armrestAboveElbow()) {
            return 0;
        }
        double wanted = Math.max(.45 * d.elbow, d.armrestAboveElbow() ? d.armrest : 0);
        return Math.min(45 * b.of(BodyMeasure.STATURE) / 1740, Math.max(0, wanted));
    }
}
