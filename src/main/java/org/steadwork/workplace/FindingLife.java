package org.steadwork.workplace;

import java.util.List;

/**
 * A finding's life as its page shows it.
 *
 * @param steps all that was recorded, the latest first, undone ones among them
 * @param looks what each assessment since measured of it, the earliest first
 * @param effect what came of it in words, or what is still to be done to know
 * @param last number of the step that may be undone, or null
 */
record FindingLife(List<Step> steps, List<Look> looks, String effect, Long last) {

    /** One step; {@code undone} says who undid it, when and why, or is null. */
    record Step(String stage, String on, String with, String recorded, String undone) {
    }

    /** What one assessment found: value with its band, and how far it moved from the look before. */
    record Look(String on, String value, String word, String state, String change) {
    }
}
