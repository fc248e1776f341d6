package org.steadwork.letter;

import java.time.Instant;

/** A letter in the list of a case. The signature is null while it is a draft. */
public record LetterRow(int number, String kind, String to, String body, Instant savedAt, String savedBy, Instant signedAt, String signedBy,
                        Integer pages, Instant withdrawnAt) {

    public boolean signed() {
        return signedAt != null;
    }

    public boolean withdrawn() {
        return withdrawnAt != null;
    }
}
