package org.steadwork.drawing.desk;

/**
 * The near arm with its finger tips on the home row.
 *
 * @param abduction degrees by which the upper arm is held out to the side (it then looks too short)
 * @param flexion   degrees by which the upper arm points forward of straight down
 */
record Arm(Point elbow, Point wrist, Point knuckle, Point tip, double abduction, double flexion) {

    /**
     * Puts the hand on the keys.
     *
     * @param edge x of the desk edge, over which the forearm must pass, in mm
     * @param top  height of the desk top, in mm
     */
    static Arm reaching(Pose pose, double keysX, double keysY, double edge, double top) {
        double h = pose.stature();
        Point shoulder = pose.joints().shoulder();
        Point tip = new Point(keysX, keysY + .005 * h);
        Point knuckle = tip.plus(-.046 * h, .024 * h);
        Point wrist = knuckle.plus(-.050 * h, .001 * h);
        double upper = pose.upperArm();
        double fore = pose.forearm();
        double distance = wrist.distance(shoulder);
        Point elbow;
        if (distance >= upper + fore - 1) {
            // beyond reach: a straight arm that stops short of the keys, on purpose
            elbow = shoulder.towards(wrist, upper / distance);
            wrist = shoulder.towards(wrist, (upper + fore) / distance);
        } else {
            double base = Math.atan2(wrist.y() - shoulder.y(), wrist.x() - shoulder.x());
            double cosine = (upper * upper + distance * distance - fore * fore) / (2 * upper * distance);
            double angle = base - Math.acos(Math.max(-1, Math.min(1, cosine)));
            elbow = overTheEdge(shoulder.plus(upper * Math.cos(angle), upper * Math.sin(angle)), wrist, shoulder, pose, edge, top);
        }
        double seen = elbow.distance(shoulder);
        return new Arm(elbow, wrist, knuckle, tip, Math.toDegrees(Math.acos(Math.max(0, Math.min(1, seen / upper)))),
                Math.toDegrees(Math.atan2(elbow.x() - shoulder.x(), shoulder.y() - elbow.y())));
    }

    /** Lifts the elbow degree by degree until the forearm passes over the desk edge; the upper arm then swings out. */
    private static Point overTheEdge(Point start, Point wrist, Point shoulder, Pose pose, double edge, double top) {
        Point elbow = start;
        double slope = Math.atan2(wrist.y() - elbow.y(), wrist.x() - elbow.x());
        for (int i = 0; i < 60 && !clears(elbow, wrist, pose.stature(), edge, top); i++) {
            slope -= Math.toRadians(1);
            Point next = wrist.plus(-pose.forearm() * Math.cos(slope), -pose.forearm() * Math.sin(slope));
            if (next.distance(shoulder) > pose.upperArm()) {
                break;
            }
            elbow = next;
        }
        return elbow;
    }

    private static boolean clears(Point elbow, Point wrist, double h, double edge, double top) {
        double radius = .021 * h;
        if (elbow.x() >= edge) {
            return elbow.y() - radius >= top - 2;
        }
        double share = (edge - elbow.x()) / (wrist.x() - elbow.x());
        return elbow.y() + share * (wrist.y() - elbow.y()) - (radius * (1 - share) + .015 * h * share) >= top - 2;
    }
}
