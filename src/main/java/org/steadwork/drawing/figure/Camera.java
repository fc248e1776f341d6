package org.steadwork.drawing.figure;

import java.util.List;

/**
 * The direction the figure is seen from, without perspective.
 *
 * @param towards unit direction from the figure to the eye
 */
record Camera(Vec3 towards, Vec3 right, Vec3 up) {

    private static final double SIDE_ON = 0.6;

    /** Makes a camera from {@code side}, {@code front}, {@code back}, {@code top}, or from yaw and elevation in degrees. */
    static Camera of(Object view) {
        if (view instanceof List<?> angles) {
            double[] v = Values.numbers("view", angles);
            return of(v[0], v[1]);
        }
        return switch (String.valueOf(view)) {
            case "side" -> of(0, 0);
            case "front" -> of(90, 0);
            case "back" -> of(-90, 0);
            case "top" -> of(0, 90);
            default -> throw new IllegalArgumentException("there is no view '" + view + "'");
        };
    }

    /** Yaw 0 looks from the figure's right, 90 from the front. */
    private static Camera of(double yawDegrees, double elevationDegrees) {
        double yaw = Math.toRadians(yawDegrees);
        double elevation = Math.toRadians(elevationDegrees);
        Vec3 towards = new Vec3(Math.sin(yaw) * Math.cos(elevation), Math.sin(elevation), Math.cos(yaw) * Math.cos(elevation));
        Vec3 right = new Vec3(Math.cos(yaw), 0, -Math.sin(yaw));
        return new Camera(towards, right, towards.cross(right));
    }

    Point project(Vec3 v) {
        return new Point(v.dot(right), v.dot(up));
    }

    double depth(Vec3 v) {
        return v.dot(towards);
    }

    /** True in views near enough to the side that the far limbs are drawn lighter. */
    boolean isSideOn() {
        return Math.abs(towards.x()) < SIDE_ON * Math.hypot(towards.x(), towards.z()) && Math.abs(towards.y()) < Math.sin(SIDE_ON);
    }

    /** True when the eye is level with the figure, so that the floor is a line. */
    boolean isLevel() {
        return Math.abs(towards.y()) < .01;
    }

    Side nearSide() {
        return right.x() > 0 ? Side.R : Side.L;
    }
}
