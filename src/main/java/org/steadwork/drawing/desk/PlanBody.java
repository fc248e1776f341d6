package org.steadwork.drawing.desk;

import java.util.Map;

/**
 * The person from above. All in mm, each in [100, 1500].
 *
 * @param everydayReach elbow to fingertip, the upper arm hanging
 * @param longestReach  shoulder to fingertip over the desk, the arm straight
 * @param estimated     whether a length was taken from stature: the zones are then a guess and the drawing says so
 */
public record PlanBody(double shoulderBreadth, double everydayReach, double longestReach, boolean estimated) {

    /** Source: Drillis and Contini, Body segment parameters, 1966 (from memory). */
    private static final double SHOULDERS_OF_STATURE = .259;
    private static final double ARM_OF_STATURE = .44;
    /** Of the everyday reach, where the keys lie before the shoulders. */
    private static final double KEYS = .9;
    private static final double ELBOW_AHEAD = 20;
    private static final double TRUNK = 130;

    public PlanBody {
        PlanScene.check("shoulder breadth", shoulderBreadth, 100, 1500);
        PlanScene.check("everyday reach", everydayReach, 100, 1500);
        PlanScene.check("longest reach", longestReach, 100, 1500);
    }

    /**
     * Takes what was measured and the rest from stature.
     *
     * @param body as in a {@link DeskScene}
     * @param arm  shoulder to fingertip in mm, null when not measured
     */
    public static PlanBody of(Map<BodyMeasure, Double> body, Double arm) {
        Lengths lengths = new Lengths(body);
        double stature = lengths.of(BodyMeasure.STATURE);
        double reach = arm == null ? ARM_OF_STATURE * stature : arm;
        double down = Math.min(lengths.of(BodyMeasure.UPPER_ARM), reach * .8);
        return new PlanBody(SHOULDERS_OF_STATURE * stature, lengths.of(BodyMeasure.FOREARM_HAND), Math.sqrt(reach * reach - down * down),
                arm == null || !lengths.measured(BodyMeasure.FOREARM_HAND));
    }

    /** Where the keys lie before the shoulders when the upper arms hang, in mm. */
    public double keysAhead() {
        return ELBOW_AHEAD + KEYS * everydayReach;
    }

    /** Where the edge of the desk then is, in mm: as far from the keys as given, but never in the trunk. */
    public double edgeAhead(double keysFromEdge) {
        return Math.max(TRUNK, keysAhead() - keysFromEdge);
    }

    double half() {
        return shoulderBreadth / 2;
    }

    Point elbow(int side) {
        return new Point(side * half() * 1.02, ELBOW_AHEAD);
    }

    Point shoulder(int side) {
        return new Point(side * (half() - 45), 0);
    }
}
