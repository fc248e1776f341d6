package org.steadwork.drawing.desk;

import java.util.List;
import java.util.Objects;

/**
 * The desk from above in one state.
 *
 * @param edge      front edge of the desk before the line between the shoulders, in mm, in [0, 1000]
 * @param screens   from left to right, at most three; none when they were not looked at
 * @param pointer   mouse or other pointing device; it, papers, phone and window are null when there is none or it was not looked at
 */
public record PlanState(double edge, List<PlanScreen> screens, PlanThing keyboard, PlanThing pointer, PlanThing papers, PlanThing phone,
        PlanWindow window) {

    public PlanState {
        PlanScene.check("desk edge", edge, 0, 1000);
        screens = List.copyOf(screens);
        if (screens.size() > 3) {
            throw new IllegalArgumentException("The plan shows at most three screens, not " + screens.size());
        }
        Objects.requireNonNull(keyboard, "keyboard");
    }

    /** Whether two screens are used about equally. */
    boolean equalScreens() {
        return screens.stream().filter(PlanScreen::main).count() > 1;
    }
}
