package org.steadwork.drawing.figure;

/** A hand's own axes from its wrist: along the fingers, towards the thumb, out of the palm. */
record Hand(Vec3 wrist, Vec3 fingers, Vec3 thumb, Vec3 palm) {

    Vec3 at(double along, double thumbward, double palmward) {
        return wrist.plus(fingers.times(along)).plus(thumb.times(thumbward)).plus(palm.times(palmward));
    }

    Ball ball(double along, double thumbward, double palmward, double radius) {
        return new Ball(at(along, thumbward, palmward), radius);
    }
}
