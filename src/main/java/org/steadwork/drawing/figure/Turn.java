package org.steadwork.drawing.figure;

/** A rotation of the figure's space, kept as the three rows of its matrix. Angles in degrees. */
record Turn(Vec3 r0, Vec3 r1, Vec3 r2) {

    static Turn aboutX(double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        return new Turn(new Vec3(1, 0, 0), new Vec3(0, c, -s), new Vec3(0, s, c));
    }

    static Turn aboutY(double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        return new Turn(new Vec3(c, 0, s), new Vec3(0, 1, 0), new Vec3(-s, 0, c));
    }

    static Turn aboutZ(double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        return new Turn(new Vec3(c, -s, 0), new Vec3(s, c, 0), new Vec3(0, 0, 1));
    }

    /** Applies the inner rotation first, then this one: angles are counted from the part below. */
    Turn of(Turn inner) {
        Vec3 c0 = new Vec3(inner.r0.x(), inner.r1.x(), inner.r2.x());
        Vec3 c1 = new Vec3(inner.r0.y(), inner.r1.y(), inner.r2.y());
        Vec3 c2 = new Vec3(inner.r0.z(), inner.r1.z(), inner.r2.z());
        return new Turn(row(r0, c0, c1, c2), row(r1, c0, c1, c2), row(r2, c0, c1, c2));
    }

    Vec3 of(Vec3 v) {
        return new Vec3(r0.dot(v), r1.dot(v), r2.dot(v));
    }

    Vec3 of(double x, double y, double z) {
        return of(new Vec3(x, y, z));
    }

    private static Vec3 row(Vec3 r, Vec3 c0, Vec3 c1, Vec3 c2) {
        return new Vec3(r.dot(c0), r.dot(c1), r.dot(c2));
    }
}
