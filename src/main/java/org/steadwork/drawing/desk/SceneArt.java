package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.Setting.*;

import java.util.ArrayList;
import java.util.List;

/** Draws floor, level lines, furniture and person; over the proposed state the present one shows only what differs. */
final class SceneArt {

    private final Sheet sheet;
    private final Pen pen;
    private final Frame frame;
    private final Stage stage;

    SceneArt(Sheet sheet) {
        this.sheet = sheet;
        pen = sheet.pen();
        frame = sheet.frame();
        stage = sheet.stage();
    }

    void draw() {
        floor();
        levels();
        for (Placed state : sheet.shown()) {
            pen.open("g");
            state(state, sheet.show() == Show.BOTH && state.present());
            pen.close("g");
        }
        notMeasured();
    }

    private void floor() {
        double y = frame.floorY();
        double from = frame.x(sheet.leftLane() - 10);
        double to = frame.x(sheet.rightLane() + 155);
        pen.line(new Point(from, y), new Point(to, y), Ink.line(Palette.INK, 1.6));
        StringBuilder d = new StringBuilder();
        for (double x = from + 8; x < to - 8; x += 14) {
            d.append('M').append(Frame.p(x, y + 1)).append('L').append(Frame.p(x - 7, y + 7));
        }
        pen.path(d.toString(), Ink.line(Palette.RULE, 1));
    }

    /** Levels of elbow, eye, keys and screen top out to the gauges; one that nearly repeats another is left out. */
    private void levels() {
        List<Double> drawn = new ArrayList<>();
        for (Placed state : sheet.shown()) {
            Deviations d = state.deviations();
            Ink ink = Ink.line(Palette.LEVEL, .8).dash(state.present() ? "2 3" : "7 3");
            level(drawn, d.elbowAt, state.arm().elbow().x(), ink, d.missing(Target.ELBOW).isEmpty());
            level(drawn, d.eyeAt, state.joints().eye().x() + 20, ink, d.missing(Bands.screenTarget(stage.scene().glasses())).isEmpty());
            level(drawn, state.settings().home(), state.keysX() + 80, ink, state.settings().measured(DESK_HEIGHT));
            level(drawn, state.settings().of(SCREEN_TOP), state.screenX() + 40, ink, state.settings().measured(SCREEN_TOP));
            if (!stage.standing() && state.settings().measured(SEAT_HEIGHT)) {
                double seat = state.settings().of(SEAT_HEIGHT);
                pen.line(frame.at(state.shift(), seat), frame.at(sheet.leftLane() - 50, seat), ink);
            }
        }
    }

    private void level(List<Double> drawn, double y, double fromX, Ink ink, boolean measured) {
        if (measured && drawn.stream().noneMatch(other -> Math.abs(other - y) < 12)) {
            drawn.add(y);
            pen.line(frame.at(fromX, y), new Point(sheet.lane(sheet.rightLane(), 1) + 9, frame.y(y)), ink);
        }
    }

    private void state(Placed at, boolean over) {
        Look look = sheet.look(at);
        Settings now = stage.now().settings();
        Settings then = stage.then().settings();
        boolean moved = Math.abs(stage.now().shift() - stage.then().shift()) > 3;
        boolean chair = !over || now.differs(then, SEAT_HEIGHT, SEAT_DEPTH) || moved;
        ChairArt chairArt = new ChairArt(pen, frame, at, look);
        DeskArt desk = new DeskArt(pen, frame, at, look, stage.edge());
        PersonArt person = new PersonArt(pen, frame, at, look, stage.standing());
        if (!over) {
            desk.leg();
        }
        if (!stage.standing() && chair) {
            chairArt.behind(over);
        }
        if (!over || now.differs(then, FOOTREST_HEIGHT)) {
            desk.footrest();
        }
        if (!over || screenDiffers(now, then)) {
            new ScreenArt(pen, frame, at, look).draw();
        }
        person.body();
        if (!stage.standing() && chair) {
            chairArt.pan();
        }
        if (!over || now.differs(then, DESK_HEIGHT, DESK_DEPTH, DESK_THICKNESS)) {
            desk.top();
        }
        if (!over || now.differs(then, HOME_ROW, DESK_HEIGHT) || Math.abs(stage.now().keysX() - stage.then().keysX()) > 3) {
            desk.keyboard();
        }
        if (!stage.standing() && (!over || now.differs(then, ARMREST, SEAT_HEIGHT))) {
            chairArt.armrest();
        }
        person.arm();
        person.marks(over);
    }

    private boolean screenDiffers(Settings now, Settings then) {
        return now.differs(then, SCREEN_TOP, SCREEN_DISTANCE, SCREEN_HEIGHT) || now.screen != then.screen
                || Math.abs(stage.now().screenX() - stage.then().screenX()) > 5;
    }

    private void notMeasured() {
        if (stage.standing()) {
            return;
        }
        Placed at = sheet.shown().get(0);
        Skeleton j = at.joints();
        tag(BodyPart.SHANK, j.knee().towards(j.ankle(), .5).plus(75, 0), Type.of(11, Palette.MUTED));
        tag(BodyPart.ARM, at.arm().elbow().towards(at.arm().wrist(), .5).plus(0, 65), Type.of(11, Palette.MUTED).centred());
        tag(BodyPart.THIGH, j.hip().towards(j.knee(), .5), Type.of(11, Palette.MUTED).centred());
        tag(BodyPart.HEAD, j.eye().plus(-60, 40), Type.of(11, Palette.MUTED).centred());
    }

    private void tag(BodyPart part, Point place, Type type) {
        if (!part.measured(stage.body(), stage.standing())) {
            Point p = frame.at(place);
            pen.text(p.x(), p.y(), "not measured", type.inItalic().withHalo());
        }
    }
}
