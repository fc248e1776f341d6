package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.BodyMeasure.*;
import static org.steadwork.drawing.desk.Setting.*;

/**
 * Hip, leg and foot of one pose.
 *
 * @param footTurn  degrees; positive: the toes hang lower than the heel
 * @param hang      mm between the sole and what should carry it; 0 when it is carried
 * @param backMoved mm by which the buttocks stand forward of the back rest
 * @param backGap   the part of {@code backMoved} that no cushion fills, in mm
 */
record Legs(Point hip, Point knee, Point ankle, Point pelvis, double footTurn, double hang, double backMoved, double backGap) {

    /** Knee gap under which the calf meets the seat and the back leaves the rest, in mm. */
    static final double CALF_MEETS_SEAT = 8;
    /** Seat over the legs above which the feet are drawn hanging, in mm. */
    static final double FEET_LEAVE = 10;

    static Legs standing(Lengths b) {
        double h = b.of(STATURE);
        double shoe = b.of(SHOE);
        Point hip = new Point(0, .515 * h + shoe);
        return new Legs(hip, new Point(.008 * h, b.of(POPLITEAL) + .034 * h * .8 + shoe), new Point(-.012 * h, .040 * h + shoe),
                new Point(-.004 * h, hip.y() + .045 * h), 0, 0, 0, 0);
    }

    static Legs sitting(Lengths b, Settings s, Deviations d) {
        double h = b.of(STATURE);
        double kneeRadius = .034 * h;
        double ankleHeight = .040 * h;
        double thigh = b.of(BodyMeasure.THIGH);
        double seat = s.of(SEAT_HEIGHT);
        double gap = Math.max(0, CALF_MEETS_SEAT - d.knee);
        double back = s.of(CUSHION) + gap;
        double shank = b.of(POPLITEAL) + kneeRadius - ankleHeight;
        Point hip = new Point(.072 * h + back, seat + thigh / 2);
        Point pelvis = new Point(.068 * h + back, seat + .069 * h);
        if (d.feet > FEET_LEAVE) {
            Point knee = new Point(b.of(BUTTOCK_POPLITEAL) + .85 * kneeRadius + back, seat + kneeRadius);
            double sine = Math.min(Math.sin(Math.toRadians(17)), d.feet / (.114 * h));
            return new Legs(hip, knee, knee.plus(.004 * h, -shank), pelvis, Math.toDegrees(Math.asin(sine)), d.feet, back, gap);
        }
        double support = s.of(FOOTREST_HEIGHT);
        double kneeAt = support + b.of(SHOE) + ankleHeight + shank;
        double thighLength = Math.hypot(b.of(BUTTOCK_POPLITEAL) + .85 * kneeRadius - .072 * h, thigh / 2 - kneeRadius);
        double rise = kneeAt - hip.y();
        Point knee = new Point(hip.x() + Math.sqrt(Math.max(1, thighLength * thighLength - rise * rise)), kneeAt);
        Point ankle = new Point(knee.x() + .004 * h, support + b.of(SHOE) + ankleHeight);
        return new Legs(hip, knee, ankle, pelvis, support > 0 ? -s.of(FOOTREST_ANGLE) : 0, 0, back, gap);
    }
}
