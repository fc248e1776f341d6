package org.steadwork.letter;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The words of a letter before it is signed.
 *
 * @param texts    text by section key, in printed order; only sections the reader may have
 * @param heldBack what the case file holds and the letter does not, with the reason; for the clinician, never printed
 */
record Draft(Map<String, String> texts, List<HeldBack> heldBack) {

    Draft {
        texts = new LinkedHashMap<>(texts);
        heldBack = List.copyOf(heldBack);
    }

    /**
     * Something the case file gave to the draft.
     *
     * @param section key of the section it went into
     * @param because where in the case file it comes from
     * @param rule    what lets it through to this reader
     */
    record Included(String section, String what, String because, String rule) {
    }

    /**
     * Something left out.
     *
     * @param what   the information in words
     * @param reason why this reader does not get it
     */
    record HeldBack(String what, String reason) {
    }
}
