package org.steadwork.drawing.desk;

import static org.steadwork.drawing.desk.BodyMeasure.*;
import static org.steadwork.drawing.desk.Setting.*;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far one state is from the person's own measures, in mm and degrees, and how each stands against its band.
 * What rests on a number that was not measured is given for the drawing only and judged {@link State#NOT_MEASURED}.
 */
final class Deviations {

    final double elbowAt;
    final double eyeAt;
    /** Seat over the legs; positive: the feet hang. 0 when standing. */
    final double feet;
    final double elbow;
    final double thigh;
    final double knee;
    /** Arm rest over the elbow. */
    final double armrest;
    /** Top of the screen below the eye. */
    final double drop;
    final double distance;
    /** Degrees below the horizontal from the eye to the middle of the screen. */
    final double gaze;

    private final Lengths body;
    private final Settings settings;
    private final DeskScene scene;

    Deviations(DeskScene scene, Lengths body, Settings settings) {
        this.scene = scene;
        this.body = body;
        this.settings = settings;
        double seat = settings.of(SEAT_HEIGHT);
        boolean standing = scene.standing();
        elbowAt = standing ? body.of(ELBOW_STANDING) + body.of(SHOE) : seat + body.of(ELBOW_REST);
        eyeAt = standing ? body.of(EYE_STANDING) + body.of(SHOE) : seat + body.of(EYE_SITTING);
        feet = standing ? 0 : seat - settings.of(FOOTREST_HEIGHT) - body.of(POPLITEAL) - body.of(SHOE);
        thigh = settings.underside() - seat - body.of(BodyMeasure.THIGH);
        knee = body.of(BUTTOCK_POPLITEAL) - (settings.of(SEAT_DEPTH) - settings.of(CUSHION));
        armrest = settings.of(ARMREST) - body.of(ELBOW_REST);
        elbow = settings.home() - elbowAt;
        drop = eyeAt - settings.of(SCREEN_TOP);
        distance = settings.of(SCREEN_DISTANCE);
        gaze = Math.toDegrees(Math.atan2(eyeAt - (settings.of(SCREEN_TOP) - settings.of(SCREEN_HEIGHT) / 2), distance));
    }

    double of(Target target) {
        return switch (target) {
            case FEET -> feet;
            case ELBOW -> elbow;
            case THIGH -> thigh;
            case KNEE -> knee;
            case ARMREST -> armrest;
            case SCREEN_SINGLE, SCREEN_PROGRESSIVE -> drop;
            case DISTANCE -> distance;
            case GAZE -> gaze;
        };
    }

    State state(Target target) {
        if (missing(target).isPresent()) {
            return State.NOT_MEASURED;
        }
        return scene.bands().of(target).judge(of(target));
    }

    /** The screen's height, which a good angle of gaze excuses when the lenses allow a low screen. */
    State screen() {
        Target target = Bands.screenTarget(scene.glasses());
        State byHeight = state(target);
        return byHeight != State.NOT_MEASURED && acceptedByGaze() ? State.IN_RANGE : byHeight;
    }

    boolean acceptedByGaze() {
        return scene.glasses() == Glasses.SINGLE && state(Target.SCREEN_SINGLE).off() && drop >= 0
                && state(Target.GAZE) == State.IN_RANGE;
    }

    State sight() {
        return State.worse(state(Target.DISTANCE), state(Target.GAZE));
    }

    boolean armrestAboveElbow() {
        return !scene.standing() && settings.has(ARMREST) && armrest > 5;
    }

    /** The word of the first number that is missing for a target. */
    Optional<String> missing(Target target) {
        return Stream.concat(bodyFor(target).stream().filter(m -> !body.measured(m)).map(m -> m.word),
                settingsFor(target).stream().filter(s -> !settings.measured(s)).map(s -> s.word)).findFirst();
    }

    private List<BodyMeasure> bodyFor(Target target) {
        boolean standing = scene.standing();
        return switch (target) {
            case FEET -> List.of(POPLITEAL, SHOE);
            case ELBOW -> standing ? List.of(ELBOW_STANDING, SHOE) : List.of(ELBOW_REST);
            case ARMREST -> List.of(ELBOW_REST);
            case THIGH -> List.of(BodyMeasure.THIGH);
            case KNEE -> List.of(BUTTOCK_POPLITEAL);
            case DISTANCE -> List.of();
            case SCREEN_SINGLE, SCREEN_PROGRESSIVE, GAZE -> standing ? List.of(EYE_STANDING, SHOE) : List.of(EYE_SITTING);
        };
    }

    private List<Setting> settingsFor(Target target) {
        List<Setting> own = switch (target) {
            case FEET -> List.of(FOOTREST_HEIGHT);
            case ELBOW -> List.of(DESK_HEIGHT, HOME_ROW);
            case THIGH -> List.of(DESK_HEIGHT, DESK_THICKNESS);
            case KNEE -> List.of(SEAT_DEPTH);
            case ARMREST -> List.of(Setting.ARMREST);
            case DISTANCE -> List.of(SCREEN_DISTANCE);
            case SCREEN_SINGLE, SCREEN_PROGRESSIVE -> List.of(SCREEN_TOP);
            case GAZE -> List.of(SCREEN_TOP, SCREEN_HEIGHT, SCREEN_DISTANCE);
        };
        boolean needsSeat = !scene.standing() && target != Target.KNEE && target != Target.ARMREST && target != Target.DISTANCE;
        return needsSeat ? Stream.concat(Stream.of(SEAT_HEIGHT), own.stream()).toList() : own;
    }
}
