package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.Setting.*;

import java.util.EnumMap;
import java.util.Map;

/** The settings one state is drawn with: the measured ones, and plausible stand-ins for the rest, which are never judged. */
final class Settings {

    final SeatKind seat;
    final ScreenKind screen;
    private final Map<Setting, Double> measured;
    private final Map<Setting, Double> drawn;

    private Settings(SeatKind seat, ScreenKind screen, Map<Setting, Double> measured, Map<Setting, Double> drawn) {
        this.seat = seat;
        this.screen = screen;
        this.measured = measured;
        this.drawn = drawn;
    }

    static Settings present(DeskScene scene, Lengths body) {
        Map<Setting, Double> proposed = scene.proposal().map(DeskState::settings).orElse(Map.of());
        DeskState now = scene.present();
        return of(now, now.settings(), proposed, body, scene.standing());
    }

    /** A proposed setting that is missing stays as it is now. */
    static Settings proposed(DeskScene scene, Lengths body) {
        DeskState then = scene.proposal().orElse(scene.present());
        Map<Setting, Double> measured = new EnumMap<>(Setting.class);
        measured.putAll(scene.present().settings());
        measured.putAll(then.settings());
        return of(then, measured, Map.of(), body, scene.standing());
    }

    private static Settings of(DeskState state, Map<Setting, Double> measured, Map<Setting, Double> other, Lengths body, boolean standing) {
        Map<Setting, Double> drawn = standIns(measured, other, body, standing);
        other.forEach((setting, value) -> {
            if (!setting.canBeAbsent()) {
                drawn.put(setting, value);
            }
        });
        drawn.putAll(measured);
        return new Settings(state.seat(), state.screen(), measured, drawn);
    }

    private static Map<Setting, Double> standIns(Map<Setting, Double> measured, Map<Setting, Double> other, Lengths body, boolean standing) {
        double shoe = body.of(BodyMeasure.SHOE);
        double seat = measured.getOrDefault(SEAT_HEIGHT, other.getOrDefault(SEAT_HEIGHT, body.of(BodyMeasure.POPLITEAL) + shoe));
        double elbow = standing ? body.of(BodyMeasure.ELBOW_STANDING) + shoe : seat + body.of(BodyMeasure.ELBOW_REST);
        double eye = standing ? body.of(BodyMeasure.EYE_STANDING) + shoe : seat + body.of(BodyMeasure.EYE_SITTING);
        Map<Setting, Double> drawn = new EnumMap<>(Setting.class);
        drawn.put(SEAT_HEIGHT, seat);
        drawn.put(SEAT_DEPTH, body.of(BodyMeasure.BUTTOCK_POPLITEAL) - 40);
        drawn.put(CUSHION, 0.);
        drawn.put(BACK_ANGLE, 8.);
        drawn.put(BACK_HEIGHT, 560.);
        drawn.put(LUMBAR, 195.);
        drawn.put(ARMREST, 0.);
        drawn.put(DESK_HEIGHT, elbow - 30);
        drawn.put(DESK_THICKNESS, 30.);
        drawn.put(DESK_DEPTH, 800.);
        drawn.put(HOME_ROW, 30.);
        drawn.put(HOME_ROW_FROM_EDGE, 140.);
        drawn.put(FOOTREST_HEIGHT, 0.);
        drawn.put(FOOTREST_ANGLE, 0.);
        drawn.put(SCREEN_TOP, eye - 20);
        drawn.put(SCREEN_HEIGHT, 300.);
        drawn.put(SCREEN_DISTANCE, 640.);
        drawn.put(SCREEN_TILT, 8.);
        drawn.put(BUILT_IN_TOP, 215.);
        return drawn;
    }

    /** The same state with the back against a straight rest, for the shape of the rest itself. */
    Settings sittingRightBack(Lengths body) {
        Map<Setting, Double> straight = new EnumMap<>(drawn);
        straight.put(CUSHION, 0.);
        straight.put(SEAT_DEPTH, body.of(BodyMeasure.BUTTOCK_POPLITEAL) - 40);
        return new Settings(seat, screen, measured, straight);
    }

    double of(Setting setting) {
        return drawn.get(setting);
    }

    boolean measured(Setting setting) {
        return measured.containsKey(setting);
    }

    /** Whether there is such a thing as an arm rest, a footrest or a cushion; false as well when it was not looked at. */
    boolean has(Setting setting) {
        return drawn.get(setting) > 0;
    }

    boolean wheelchair() {
        return seat == SeatKind.WHEELCHAIR;
    }

    boolean laptop() {
        return screen != ScreenKind.SEPARATE;
    }

    boolean laptopKeys() {
        return screen == ScreenKind.LAPTOP;
    }

    /** Height of the middle letter row above the floor, in mm. */
    double home() {
        return of(DESK_HEIGHT) + of(HOME_ROW);
    }

    double underside() {
        return of(DESK_HEIGHT) - of(DESK_THICKNESS);
    }

    /** Whether any of these differs by more than 3 mm (or degrees), the least the drawing can show. */
    boolean differs(Settings other, Setting... which) {
        for (Setting setting : which) {
            if (Math.abs(of(setting) - other.of(setting)) > 3) {
                return true;
            }
        }
        return false;
    }
}
