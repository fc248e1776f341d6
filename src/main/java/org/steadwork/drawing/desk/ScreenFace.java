package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.Setting.*;

/** Where the face of the screen is: its middle in mm and its tilt in radians, top away from the person. */
record ScreenFace(Point middle, double tilt) {

    static ScreenFace of(Settings s, double x) {
        double tilt = Math.toRadians(s.of(SCREEN_TILT));
        return new ScreenFace(new Point(x, s.of(SCREEN_TOP) - s.of(SCREEN_HEIGHT) / 2 * Math.cos(tilt)), tilt);
    }

    /** A point up along the face and back behind it, in mm from the middle. */
    Point at(double up, double behind) {
        return middle.plus(up * Math.sin(tilt) + behind * Math.cos(tilt), up * Math.cos(tilt) - behind * Math.sin(tilt));
    }

    /** Where the line of the face meets a height: the hinge of a laptop. */
    Point hingeAt(double y) {
        return new Point(middle.x() + (y - middle.y()) * Math.tan(tilt), y);
    }

    /** The point the line of sight ends at. */
    Point aim() {
        return middle.plus(-4, 0);
    }
}
