package org.steadwork.drawing.figure;

/** A point or direction in the figure's space: x forward, y up, z to the figure's right; stature = 100. */
record Vec3(double x, double y, double z) {

    static final Vec3 ORIGIN = new Vec3(0, 0, 0);

    private static final double NOTHING = 1e-9;

    Vec3 plus(Vec3 o) {
        return new Vec3(x + o.x, y + o.y, z + o.z);
    }

    Vec3 minus(Vec3 o) {
        return new Vec3(x - o.x, y - o.y, z - o.z);
    }

    Vec3 times(double k) {
        return new Vec3(x * k, y * k, z * k);
    }

    double dot(Vec3 o) {
        return x * o.x + y * o.y + z * o.z;
    }

    Vec3 cross(Vec3 o) {
        return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    /** The direction of length 1; forward when there is no direction. */
    Vec3 unit() {
        double n = length();
        return n > NOTHING ? times(1 / n) : new Vec3(1, 0, 0);
    }

    /** The part at right angles to a direction of length 1. */
    Vec3 across(Vec3 axis) {
        return minus(axis.times(dot(axis)));
    }

    /** The point a share of the way to another. */
    Vec3 towards(Vec3 o, double share) {
        return times(1 - share).plus(o.times(share));
    }

    /** This unit direction turned by degrees towards another at right angles to it. */
    Vec3 turnedTo(Vec3 o, double degrees) {
        double d = Math.toRadians(degrees);
        return times(Math.cos(d)).plus(o.times(Math.sin(d)));
    }
}
