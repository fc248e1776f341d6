package org.steadwork.letter.disclosure;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * One party that would read or hear something, with what the worker agreed to for that party.
 *
 * @param kind   the kind of reader
 * @param gate   the state of the consent for this reader on the day of sending
 * @param ticked the categories ticked for this reader; a category that is missing counts as no
 */
public record Reader(Recipient kind, Gate gate, Set<InformationCategory> ticked) {
    public Reader {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(gate, "gate");
        ticked = Set.copyOf(ticked);
    }

    /** Describes a reader by the consent on record for it, if there is one, as it stands on a day. */
    public static Reader of(Recipient kind, Optional<GivenConsent> consent, LocalDate day) {
        return consent.map(given -> new Reader(kind, given.on(day), given.ticked()))
                .orElseGet(() -> new Reader(kind, Gate.NONE, Set.of()));
    }
}
