package org.steadwork.drawing.desk;

/**
 * The window nearest to the desk.
 *
 * @param offParallel between the sight line and the window, in degrees: 0 runs along the sight line, 90 faces or backs it
 */
public record PlanWindow(double offParallel, Where where) {

    /** Where the window lies for the person at the desk. */
    public enum Where {
        LEFT, RIGHT, AHEAD, BEHIND
    }

    public PlanWindow {
        PlanScene.check("angle of the window", offParallel, 0, 90);
    }
}
