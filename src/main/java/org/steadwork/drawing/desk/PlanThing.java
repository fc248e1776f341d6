package org.steadwork.drawing.desk;

/**
 * Something on the desk seen from above, by its middle.
 *
 * @param aside mm to the person's right of the midline, in [-2000, 2000]
 * @param ahead mm before the line between the shoulders, in [-500, 2000]
 * @param width from side to side, in mm, in [20, 1000]
 */
public record PlanThing(double aside, double ahead, double width) {

    public PlanThing {
        PlanScene.check("place aside", aside, -2000, 2000);
        PlanScene.check("place ahead", ahead, -500, 2000);
        PlanScene.check("width of a thing", width, 20, 1000);
    }

    Point middle() {
        return new Point(aside, ahead);
    }
}
