package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.List;

/**
 * The sheet a stage is drawn on: how it is scaled and where the columns of gauges stand.
 *
 * @param top       where the drawing begins, under the heading
 * @param leftLane  x of the left column of gauges, in mm
 * @param rightLane x of the right column of gauges, in mm
 */
record Sheet(Pen pen, Frame frame, Stage stage, Show show, int width, double top, double left, double right, double leftLane, double rightLane) {

    /** Narrower drawings carry numbers instead of labels, with the list under them. */
    static final int NARROW = 640;
    static final double COLUMN = 204;
    static final double MARGIN = 16;
    private static final double BOTTOM = 712;

    static Sheet of(Stage stage, Show show, int width, double headingHeight) {
        Settings now = stage.now().settings();
        Settings then = stage.then().settings();
        double x0 = stage.standing() ? -330 : -300;
        double x1 = stage.edge() + Math.max(now.of(Setting.DESK_DEPTH), then.of(Setting.DESK_DEPTH)) + 185;
        double eyes = Math.max(stage.now().joints().eye().y(), stage.then().joints().eye().y());
        double screens = Math.max(now.of(Setting.SCREEN_TOP), then.of(Setting.SCREEN_TOP));
        double high = Math.max(eyes + 130, screens + 40) + 95;
        if (width < NARROW) {
            double scale = (width - 48) / (x1 - x0);
            Frame frame = new Frame(scale, 24 - x0 * scale, headingHeight + high * scale);
            return new Sheet(new Pen(), frame, stage, show, width, headingHeight, 4, width - 4, x0 + 40, x1 - 165);
        }
        double left = MARGIN + COLUMN + 20;
        double right = width - left;
        double scale = Math.min((right - left) / (x1 - x0), (BOTTOM - 60) / high);
        double floor = headingHeight + high * scale > headingHeight + BOTTOM - 100 ? headingHeight + BOTTOM - 60 : headingHeight + high * scale + 14;
        Frame frame = new Frame(scale, (left + right) / 2 - (x0 + x1) / 2 * scale, floor);
        return new Sheet(new Pen(), frame, stage, show, width, headingHeight, x0, x1, x0 + 40, x1 - 165);
    }

    boolean narrow() {
        return width < NARROW;
    }

    /** x of the gauge of the present (0) or the proposed (1) state in a column. */
    double lane(double column, int state) {
        return frame.x(column) + (state == 0 ? 0 : narrow() ? 13 : 24);
    }

    double laneOf(double column, Placed state) {
        return lane(column, state.present() ? 0 : 1);
    }

    /** The states shown, the proposed one first so that the present outline lies over it. */
    List<Placed> shown() {
        List<Placed> shown = new ArrayList<>();
        if (show.proposed()) {
            shown.add(stage.then());
        }
        if (show.present()) {
            shown.add(stage.now());
        }
        return shown;
    }

    /** The state labels and leaders point at. */
    Placed leading() {
        return show.present() ? stage.now() : stage.then();
    }

    Look look(Placed state) {
        return state.present() ? Look.present(show == Show.PRESENT) : Look.proposed();
    }
}
