package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.Setting.*;

/**
 * Both states of a scene in one frame: x forward, y up from the floor, in mm. The desk edge is the common line; the present
 * person and chair are shifted so that the hands meet the present keys.
 */
record Stage(DeskScene scene, Lengths body, Placed now, Placed then, double edge) {

    static Stage of(DeskScene scene) {
        Lengths body = new Lengths(scene.body());
        Settings now = Settings.present(scene, body);
        Settings then = Settings.proposed(scene, body);
        Deviations nowOff = new Deviations(scene, body, now);
        Deviations thenOff = new Deviations(scene, body, then);
        PoseSolver solver = new PoseSolver(scene, body);
        Pose nowPose = solver.solve(now, nowOff, true);
        Pose thenPose = solver.solve(then, thenOff, false);
        double edge = thenPose.reach() - then.of(HOME_ROW_FROM_EDGE);
        return new Stage(scene, body, place(scene, true, now, nowOff, nowPose, edge), place(scene, false, then, thenOff, thenPose, edge), edge);
    }

    private static Placed place(DeskScene scene, boolean present, Settings s, Deviations d, Pose pose, double edge) {
        double shift = shift(scene, present, s, pose, edge);
        Pose moved = pose.shifted(shift);
        double screenX = moved.joints().eye().x() + s.of(SCREEN_DISTANCE);
        double keysX = edge + s.of(HOME_ROW_FROM_EDGE);
        if (s.laptopKeys()) {
            keysX = ScreenFace.of(s, screenX).hingeAt(s.of(DESK_HEIGHT) + 20).x() - 105;
        }
        Arm arm = Arm.reaching(moved, keysX, s.home(), edge, s.of(DESK_HEIGHT));
        return new Placed(present, s, d, moved, arm, shift, screenX, keysX);
    }

    /** A shift too small to see is left to the arm; the belly never meets the desk edge. */
    private static double shift(DeskScene scene, boolean present, Settings s, Pose pose, double edge) {
        double wanted = present ? edge + s.of(HOME_ROW_FROM_EDGE) - pose.reach() : 0;
        double belly = pose.joints().waist().x() + pose.bellyRadius();
        double shift = Math.min(wanted, edge - 15 - belly);
        if (Math.abs(shift) < (scene.standing() ? 130 : 25)) {
            shift = 0;
        }
        return s.laptopKeys() ? Math.max(shift, -30) : shift;
    }

    boolean standing() {
        return scene.standing();
    }
}
