package org.steadwork.drawing.desk;

/** How much of the room both panels of a plan show, in mm. */
record PlanExtent(double left, double right, double near, double far) {

    private static final double CHAIR = -290;

    static PlanExtent of(PlanScene scene) {
        double half = scene.deskWidth() / 2 + 50;
        double far = 0;
        double near = CHAIR;
        boolean beside = false;
        for (PlanState state : scene.proposal().map(then -> new PlanState[] {scene.present(), then}).orElse(new PlanState[] {scene.present()})) {
            far = Math.max(far, state.edge() + scene.deskDepth() + 60);
            for (PlanGeometry.Face face : new PlanGeometry(scene.body(), state).faces) {
                half = Math.max(half, Math.max(Math.abs(face.left().x()), Math.abs(face.right().x())) + 50);
                far = Math.max(far, Math.max(face.left().y(), face.right().y()) + 90);
            }
            for (PlanThing thing : new PlanThing[] {state.pointer(), state.papers(), state.phone()}) {
                half = thing == null ? half : Math.max(half, Math.abs(thing.aside()) + 150);
            }
            if (state.window() != null) {
                beside |= state.window().where() == PlanWindow.Where.LEFT || state.window().where() == PlanWindow.Where.RIGHT;
                far += state.window().where() == PlanWindow.Where.AHEAD ? 130 : 0;
                near -= state.window().where() == PlanWindow.Where.BEHIND && near == CHAIR ? 190 : 0;
            }
        }
        half += beside ? 250 : 0;
        return new PlanExtent(-half, half, near, far);
    }

    double width() {
        return right - left;
    }

    double depth() {
        return far - near;
    }
}
