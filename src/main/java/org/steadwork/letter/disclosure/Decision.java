package org.steadwork.letter.disclosure;

import java.util.Objects;

/**
 * Whether one category may go to a reader, and why.
 *
 * @param verdict allow, block, or only by a recorded override
 * @param reason  the reason in a plain sentence, for the clinician; it never goes into a letter
 * @param limit   words that narrow an allowed category; empty when nothing narrows it
 * @param byTick  true when the worker's own tick for this category is what allows it, so that the tick is logged
 */
public record Decision(Verdict verdict, String reason, String limit, boolean byTick) {
    public Decision {
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(limit, "limit");
    }

    /** The three outcomes, ordered from the most open to the most closed. */
    public enum Verdict {
        ALLOW, OVERRIDE, BLOCK
    }

    public boolean allowed() {
        return verdict == Verdict.ALLOW;
    }

    static Decision block(String reason) {
        return new Decision(Verdict.BLOCK, reason, "", false);
    }
}
