package org.steadwork.drawing.desk;

import java.util.ArrayList;
import java.util.List;

/** Says in one paragraph what the drawing shows, for those who do not see it. */
final class TextAlternative {

    private TextAlternative() {
    }

    static String of(List<Label> labels, Stage stage, Show show) {
        List<String> parts = new ArrayList<>();
        for (Label label : labels) {
            List<String> states = new ArrayList<>();
            if (show.present()) {
                states.add("now " + label.now() + " (" + label.nowState().word + ")");
            }
            if (show.proposed()) {
                states.add("proposed " + label.then() + " (" + label.thenState().word + ")");
            }
            parts.add(label.head() + ": " + String.join(", ", states));
        }
        if (show.present()) {
            PostureWords.of(stage).ifPresent(words -> parts.add("As drawn now (worked out, not observed): " + words));
        }
        return String.join("; ", parts).replace(" → ", " to ").replace("−", "minus ").replace("°", " degrees") + ". All lengths in mm.";
    }
}
