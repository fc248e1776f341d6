package org.steadwork.drawing.figure;

/** A part's own axes and origin: gives points and balls of that part in the figure's space. */
record Local(Turn turn, Vec3 origin) {

    Vec3 at(double x, double y, double z) {
        return origin.plus(turn.of(x, y, z));
    }

    Ball ball(double x, double y, double z, double radius) {
        return new Ball(at(x, y, z), radius);
    }
}
