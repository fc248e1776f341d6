package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.BodyMeasure.*;

/** A person as drawn in one state, before the hands are put on the keys. All in mm. */
record Pose(Lengths body, Settings settings, Legs legs, Bend bend, Skeleton joints, Point restChest) {

    double stature() {
        return body.of(STATURE);
    }

    double upperArm() {
        return body.of(UPPER_ARM) - .043 * stature();
    }

    double forearm() {
        return body.of(FOREARM_HAND) - .126 * stature();
    }

    /** Where this person would put the keys: upper arm seven degrees forward, forearm level. */
    double reach() {
        return joints.shoulder().x() + upperArm() * Math.sin(Math.toRadians(7)) + forearm() * .985 + .096 * stature();
    }

    double bellyRadius() {
        return body.of(ABDOMINAL_DEPTH) / 2;
    }

    Pose shifted(double dx) {
        return new Pose(body, settings, legs, bend, joints.shifted(dx), restChest);
    }
}
