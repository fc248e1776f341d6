package org.steadwork.drawing.desk;

/**
 * A screen seen from above.
 *
 * @param width    of what stands there, in mm, in [100, 2000]
 * @param offset   its middle, in mm to the person's right of the midline, in [-2000, 2000]; where the screens touch, as if they stood flat
 * @param distance eye to the line of the screens, straight ahead, in mm, in [150, 2500]
 * @param turn     how far it is turned in towards the eye, in degrees, in [0, 60]
 * @param main     looked at for much of the time; two main screens are used about equally
 * @param touching turned about its inner edge, so that it keeps touching its neighbour
 */
public record PlanScreen(double width, double offset, double distance, double turn, boolean main, boolean touching) {

    public PlanScreen {
        PlanScene.check("width of a screen", width, 100, 2000);
        PlanScene.check("offset of a screen", offset, -2000, 2000);
        PlanScene.check("distance of a screen", distance, 150, 2500);
        PlanScene.check("turn of a screen", turn, 0, 60);
    }
}
