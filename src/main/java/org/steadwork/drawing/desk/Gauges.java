package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.Setting.*;

import java.util.EnumMap;
import java.util.Map;

import org.steadwork.drawing.TextWidth;

/**
 * Draws, beside the scene and at its scale, pairs "now | proposed": hatched box = target band, bar = the setting,
 * arrow = deviation from the body's level, number = signed mm. Remembers where each label's leader begins.
 */
final class Gauges {

    private static final double OPEN_BAND_SHOWN = 200;

    private final Sheet sheet;
    private final Pen pen;
    private final Frame frame;
    private final Stage stage;
    private final Map<Label.Topic, Point> anchors = new EnumMap<>(Label.Topic.class);

    Gauges(Sheet sheet) {
        this.sheet = sheet;
        pen = sheet.pen();
        frame = sheet.frame();
        stage = sheet.stage();
    }

    /** Draws all gauges and returns where the leader of each label starts. */
    Map<Label.Topic, Point> draw() {
        if (!sheet.narrow()) {
            columnWords();
        }
        Target screen = Bands.screenTarget(stage.scene().glasses());
        for (Placed state : sheet.shown()) {
            Deviations d = state.deviations();
            level(Label.Topic.SCREEN, sheet.rightLane(), state, d.eyeAt, state.settings().of(SCREEN_TOP), screen, -1, d.screen());
            level(Label.Topic.DESK, sheet.rightLane(), state, d.elbowAt, state.settings().home(), Target.ELBOW, 1, d.state(Target.ELBOW));
            if (stage.standing()) {
                fromFloor(Label.Topic.KEYS, state, state.settings().home(), d.elbowAt, Target.ELBOW, DESK_HEIGHT);
            } else {
                double seat = state.settings().of(SEAT_HEIGHT);
                fromFloor(Label.Topic.SEAT, state, seat, seat - d.feet, Target.FEET, SEAT_HEIGHT);
                if (state.settings().has(ARMREST)) {
                    level(Label.Topic.ARMREST, sheet.leftLane(), state, d.elbowAt, seat + state.settings().of(ARMREST), Target.ARMREST, 1,
                            d.state(Target.ARMREST));
                }
                kneeGap(state);
            }
        }
        if (!stage.standing()) {
            pointAtLegs();
        }
        return anchors;
    }

    private void columnWords() {
        double y = frame.floorY();
        double under = Math.min(stage.now().settings().of(DESK_HEIGHT), stage.then().settings().of(DESK_HEIGHT)) - 110;
        for (double column : new double[] {sheet.rightLane(), sheet.leftLane()}) {
            for (Placed state : sheet.shown()) {
                double x = sheet.laneOf(column, state);
                Type type = Type.of(10.5, sheet.look(state).colour());
                pen.text(x + (state.present() ? 6 : -6), y + 18, state.present() ? "now" : "proposed", state.present() ? type.toTheLeft() : type);
                if (column == sheet.rightLane()) {
                    pen.line(new Point(x, y + 6), new Point(x, frame.y(under)), Ink.line(Palette.RULE, .8).dash(state.present() ? "5 3" : null));
                }
            }
        }
    }

    private void remember(Label.Topic topic, Placed state, Point place) {
        if (state.present() || !anchors.containsKey(topic)) {
            anchors.put(topic, place);
        }
    }

    /** One level beside the body's own: the screen top, the keys or the arm rest. */
    private void level(Label.Topic topic, double column, Placed state, double reference, double actual, Target target, int sign, State judged) {
        double x = sheet.laneOf(column, state);
        double half = sheet.narrow() ? 4.5 : 8;
        double y = frame.y(actual);
        double zero = frame.y(reference);
        if (judged != State.NOT_MEASURED) {
            Band band = stage.scene().bands().of(target);
            double a = frame.y(reference + sign * Math.max(band.from(), -OPEN_BAND_SHOWN));
            double b = frame.y(reference + sign * Math.min(band.to(), OPEN_BAND_SHOWN));
            pen.hatched(x - half, Math.min(a, b), 2 * half, Math.max(2, Math.abs(a - b)));
        }
        if (judged.off() && Math.abs(y - zero) > 3) {
            pen.arrow(new Point(x, zero), new Point(x, y), Ink.line(judged.colour, 1.5), 5);
        }
        if (judged.off() && !sheet.narrow() && (state.present() || sheet.show() == Show.PROPOSED)) {
            Type type = Type.of(11, judged.colour).inBold().withHalo();
            String text = Millimetres.signed(actual - reference);
            if (column == sheet.leftLane()) {
                pen.text(armrestBeside() ? sheet.lane(column, 1) + 15 : x + 15, (y + zero) / 2 + 4, text, type);
            } else {
                pen.text(x - 13, (y + zero) / 2 + 4, text, type.toTheLeft());
            }
        }
        if (measured(topic, state)) {
            pen.line(new Point(x - half - 3, y), new Point(x + half + 3, y), bar(state, 2.4));
        }
        remember(topic, state, new Point(topic.left ? x - 6 : x, y));
    }

    private boolean armrestBeside() {
        return sheet.show() == Show.BOTH && stage.then().settings().has(ARMREST);
    }

    private static boolean measured(Label.Topic topic, Placed state) {
        return switch (topic) {
            case SCREEN -> state.settings().measured(SCREEN_TOP);
            case DESK -> state.settings().measured(DESK_HEIGHT);
            case ARMREST -> state.settings().measured(ARMREST);
            default -> true;
        };
    }

    private Ink bar(Placed state, double width) {
        return Ink.line(sheet.look(state).colour(), width).dash(state.present() ? "4 2" : null);
    }

    /** A full dimension from the floor, with the band where the body wants it. */
    private void fromFloor(Label.Topic topic, Placed state, double height, double wanted, Target target, Setting setting) {
        double x = sheet.laneOf(sheet.leftLane(), state);
        if (state.deviations().state(target) != State.NOT_MEASURED) {
            Band band = stage.scene().bands().of(target);
            double top = frame.y(wanted + Math.min(band.to(), OPEN_BAND_SHOWN));
            pen.hatched(x - 8, top, 16, frame.y(wanted + Math.max(band.from(), -OPEN_BAND_SHOWN)) - top);
        }
        double y = frame.y(height);
        if (state.settings().measured(setting)) {
            pen.arrow(new Point(x, frame.floorY()), new Point(x, y), Ink.line(sheet.look(state).colour(), 1.2).dash(state.present() ? "5 3" : null), 6);
            pen.line(new Point(x - 7, y), new Point(x + 7, y), bar(state, 2));
        }
        remember(topic, state, new Point(x - 6, y));
    }

    /** The gap behind the knee, dimensioned under the seat. */
    private void kneeGap(Placed state) {
        Deviations d = state.deviations();
        Settings s = state.settings();
        double low = Math.min(stage.now().settings().of(SEAT_HEIGHT), stage.then().settings().of(SEAT_HEIGHT));
        double y = low - (state.present() || sheet.show() != Show.BOTH ? 92 : 140);
        double from = state.shift() + s.of(SEAT_DEPTH);
        double to = state.shift() + state.pose().legs().backMoved() + stage.body().of(BodyMeasure.BUTTOCK_POPLITEAL);
        Point a = frame.at(from, y);
        if (d.state(Target.KNEE) == State.NOT_MEASURED) {
            remember(Label.Topic.KNEE, state, frame.at(from - 20, s.of(SEAT_HEIGHT) - 50));
            return;
        }
        String colour = d.state(Target.KNEE).colour;
        for (double x : new double[] {from, to}) {
            pen.line(frame.at(x, s.of(SEAT_HEIGHT) - 40), frame.at(x, y - 12), Ink.line(colour, .9));
        }
        Point b = frame.at(to, y);
        if (Math.abs(b.x() - a.x()) > 3) {
            pen.arrow(a, b, Ink.line(colour, 1.1).dash(state.present() ? "3 2" : null), 4);
        }
        String text = Millimetres.whole(d.knee);
        if (!sheet.narrow()) {
            pen.text(a.x() - 4, a.y() + 4, text, Type.of(10.5, colour).inBold().toTheLeft().withHalo());
        }
        remember(Label.Topic.KNEE, state, new Point(a.x() - 8 - TextWidth.of(text, 10.5, true), a.y()));
    }

    private void pointAtLegs() {
        Placed state = sheet.leading();
        double h = state.pose().stature();
        Point ankle = state.joints().ankle();
        anchors.put(Label.Topic.FEET, frame.at(ankle.x() + .10 * h, Math.max(25, ankle.y() - .06 * h)));
        anchors.put(Label.Topic.THIGH, frame.at(stage.edge() + 150, state.settings().underside() - 6));
    }
}
