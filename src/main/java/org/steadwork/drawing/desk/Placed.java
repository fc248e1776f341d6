package org.steadwork.drawing.desk;

/**
 * One state with its person, put in the common frame whose fixed line is the desk edge. All in mm.
 *
 * @param shift   by how much the chair and the person stand forward of the proposed ones
 * @param screenX x of the middle of the screen's face
 * @param keysX   x of the middle letter row
 */
record Placed(boolean present, Settings settings, Deviations deviations, Pose pose, Arm arm, double shift, double screenX, double keysX) {

    Skeleton joints() {
        return pose.joints();
    }

    /** Front face of the back rest at a height above the floor. */
    double backRestAt(double y) {
        double low = settings.of(Setting.SEAT_HEIGHT) + .069 * pose.stature();
        double share = (y - low) / (pose.restChest().y() - low);
        return shift + share * (pose.restChest().x() - .067 * pose.stature()) - 2;
    }

    ScreenFace face() {
        return ScreenFace.of(settings, screenX);
    }
}
