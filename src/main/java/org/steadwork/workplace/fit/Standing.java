package org.steadwork.workplace.fit;

import java.util.Optional;

/**
 * The desk and the screen for working while standing; mm, not rounded.
 *
 * @param wantedDesk standing elbow height + shoe − home row
 * @param desk the nearest desk height there is
 * @param elbow home row minus standing elbow at that desk height
 * @param wantedScreenTop standing eye height + shoe − wanted drop, above the floor; NaN without standing eye height
 * @param screenChange how much higher above the desk the screen should be than sitting; NaN when not known
 */
public record Standing(double wantedDesk, double desk, double elbow, double wantedScreenTop, double screenChange) {

    /** Returns the standing setting, if the standing elbow height is known and the desk can be set at all. */
    static Optional<Standing> of(FitModel model) {
        double elbowHeight = model.person().value(BodyMeasure.STANDING_ELBOW_HEIGHT);
        Travel desk = model.station().travel(Part.DESK).orElse(null);
        if (Double.isNaN(elbowHeight) || desk == null || desk.isFixed()) {
            return Optional.empty();
        }
        double wanted = elbowHeight + model.shoe() - model.station().homeRow();
        double eyeHeight = model.person().value(BodyMeasure.STANDING_EYE_HEIGHT);
        double screenTop = eyeHeight + model.shoe() - model.target(Deviation.SCREEN_DROP).aim();
        double change = eyeHeight - elbowHeight - (model.eye() - model.elbow());
        return Optional.of(new Standing(wanted, desk.clip(wanted), desk.clip(wanted) - wanted, screenTop, change));
    }
}
