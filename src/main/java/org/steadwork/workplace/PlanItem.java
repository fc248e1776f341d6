package org.steadwork.workplace;

import java.util.Locale;

/** What is read off a desk from above, in mm or degrees; words and ranges stand in the content. */
enum PlanItem {
    DESK_WIDTH, DESK_DEPTH, KEYS_ASIDE, KEYS_EDGE, KEYS_WIDTH, POINTER_ASIDE, POINTER_EDGE, MAIN_WIDTH, MAIN_ASIDE, MAIN_DISTANCE, MAIN_TURN,
    SECOND_WIDTH, SECOND_ASIDE, SECOND_DISTANCE, SECOND_TURN, PAPERS_ASIDE, PAPERS_EDGE, PHONE_ASIDE, PHONE_EDGE, WINDOW_OFF;

    /** The name of its field and of its entry in the content. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
