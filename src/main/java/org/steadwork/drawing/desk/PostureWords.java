package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The posture as drawn now, in words. It is worked out, not observed, and the drawing says so. */
final class PostureWords {

    /** Hanging feet beyond this no longer reach down with the toes, in mm. */
    static final double FEET_HANG = 48;

    private PostureWords() {
    }

    static Optional<String> of(Stage stage) {
        Placed now = stage.now();
        Bend bend = now.pose().bend();
        Deviations d = now.deviations();
        List<String> words = new ArrayList<>();
        if (d.missing(Target.GAZE).isEmpty()) {
            if (bend.head() > 8) {
                words.add("head bent " + Math.round(bend.head()) + "° down");
            } else if (bend.head() < -4) {
                words.add("chin lifted " + Math.round(-bend.head()) + "°");
            }
            if (bend.slump() > 4) {
                words.add("upper back rounded " + Math.round(bend.slump()) + "°");
            }
        }
        if (d.missing(Target.ELBOW).isEmpty() && bend.shrug() > 8) {
            words.add("shoulders lifted " + Math.round(bend.shrug()) + " mm");
        }
        if (d.missing(Target.ELBOW).isEmpty() && stage.body().measured(BodyMeasure.UPPER_ARM) && stage.body().measured(BodyMeasure.FOREARM_HAND)) {
            if (now.arm().abduction() > 12) {
                words.add("upper arm held out " + Math.round(now.arm().abduction()) + "°");
            }
            if (now.arm().flexion() > 25) {
                words.add("upper arm " + Math.round(now.arm().flexion()) + "° forward");
            }
        }
        if (!stage.standing() && d.missing(Target.FEET).isEmpty()) {
            if (now.pose().legs().hang() > FEET_HANG) {
                words.add("feet hanging");
            } else if (now.pose().legs().hang() > Legs.FEET_LEAVE) {
                words.add("heels off the floor");
            }
        }
        return words.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", words));
    }
}
