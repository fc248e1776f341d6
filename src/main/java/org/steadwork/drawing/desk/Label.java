package org.steadwork.drawing.desk;

/**
 * One thing the drawing says about the work place, in words: the same for labels, the narrow list and the text alternative.
 *
 * @param head what it is and its setting now and proposed
 * @param now  what that means for the person now
 */
record Label(Topic topic, String head, String now, State nowState, String then, State thenState) {

    /** The topics in the order the text alternative reads them; each stands left or right of the drawing. */
    enum Topic {
        SEAT(true), FEET(false), KNEE(true), ARMREST(true), KEYS(true), DESK(false), THIGH(false), SCREEN(false), SIGHT(false);

        final boolean left;

        Topic(boolean left) {
            this.left = left;
        }
    }

    State leading(Show show) {
        return show.present() ? nowState : thenState;
    }
}
