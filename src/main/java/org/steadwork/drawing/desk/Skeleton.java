package org.steadwork.drawing.desk;

/**
 * The joints of a person seen from the side, in mm. x = 0 is the back of the buttocks of a person sitting right back,
 * or the hip of a person standing.
 *
 * @param eyeNeutral where the eye is before head and trunk bend; its height is the measured eye height
 */
record Skeleton(Point hip, Point knee, Point ankle, Point pelvis, Point waist, Point chest, Point shoulder, Point neckBase,
        Point skullBase, Point eye, Point eyeNeutral) {

    Skeleton shifted(double dx) {
        return new Skeleton(hip.plus(dx, 0), knee.plus(dx, 0), ankle.plus(dx, 0), pelvis.plus(dx, 0), waist.plus(dx, 0),
                chest.plus(dx, 0), shoulder.plus(dx, 0), neckBase.plus(dx, 0), skullBase.plus(dx, 0), eye.plus(dx, 0),
                eyeNeutral.plus(dx, 0));
    }
}
