package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.Setting.*;

/** Draws the viewing distances across the top and the angles of gaze by the lines of sight. */
final class SightLines {

    private final Sheet sheet;
    private final Pen pen;
    private final Frame frame;
    private final double base;

    SightLines(Sheet sheet) {
        this.sheet = sheet;
        pen = sheet.pen();
        frame = sheet.frame();
        Stage stage = sheet.stage();
        double eyes = Math.max(stage.now().joints().eye().y(), stage.then().joints().eye().y());
        double screens = Math.max(stage.now().settings().of(SCREEN_TOP), stage.then().settings().of(SCREEN_TOP));
        base = Math.max(eyes, screens) + (sheet.narrow() ? 150 : 128);
    }

    /** Draws them and returns where the leader of the label starts. */
    Point draw() {
        double row = sheet.show() == Show.BOTH ? (sheet.narrow() ? 70 : 46) : 0;
        for (Placed state : sheet.shown()) {
            if (state.settings().measured(SCREEN_DISTANCE)) {
                distance(state, base + (state.present() ? row : 0));
            }
            if (!sheet.narrow() && state.deviations().missing(Target.GAZE).isEmpty()) {
                gaze(state);
            }
        }
        Placed leading = sheet.leading();
        return leading.settings().measured(SCREEN_DISTANCE) ? frame.at(leading.screenX(), base + row) : frame.at(leading.face().aim());
    }

    private void distance(Placed state, double y) {
        Point eye = state.joints().eye();
        String colour = sheet.look(state).colour();
        Point a = frame.at(eye.x(), y);
        Point b = frame.at(state.screenX(), y);
        Ink thin = Ink.line(Palette.LEVEL, .7).dash("2 3");
        pen.line(frame.at(eye.x(), eye.y() + 12), a.plus(0, -4), thin);
        pen.line(frame.at(state.screenX(), state.settings().of(SCREEN_TOP) + 16), b.plus(0, -4), thin);
        pen.arrow(a, b, Ink.line(colour, 1.1).dash(state.present() ? "5 3" : null), 6);
        pen.plate(new Point((a.x() + b.x()) / 2, a.y()),
                (state.present() ? "now " : "proposed ") + Millimetres.whole(state.settings().of(SCREEN_DISTANCE)),
                Type.of(sheet.narrow() ? 10.5 : 11, colour));
    }

    private void gaze(Placed state) {
        double angle = Math.toRadians(state.deviations().gaze);
        double along = state.present() ? 340 : 240;
        Point place = frame.at(state.joints().eye().plus(along * Math.cos(angle), -along * Math.sin(angle)));
        Type type = Type.of(11, sheet.look(state).colour());
        pen.plate(place, Millimetres.whole(state.deviations().gaze) + "°", state.present() ? type : type.inBold());
    }
}
