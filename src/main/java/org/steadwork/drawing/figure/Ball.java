package org.steadwork.drawing.figure;

/** One of the balls whose hull is a body segment. */
record Ball(Vec3 centre, double radius) {
}
