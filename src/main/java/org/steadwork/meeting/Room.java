package org.steadwork.meeting;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.steadwork.letter.disclosure.InformationCategory;

/**
 * Who hears a case, and what may be said of it in front of them. Among the clinicians of the clinic everything may, psychosocial flags
 * by name only; in front of guests what the worker agreed to for every one of them, and nothing where one of them has no consent.
 *
 * @param guests   those from outside who are in the room, each with the state of the consent
 * @param heldBack true when the case is not shown until the guests have left
 * @param open     what may be said
 */
record Room(List<Guest> guests, boolean heldBack, Set<InformationCategory> open) {

    /** A guest with the state of the worker's consent, in words. */
    record Guest(String words, boolean inForce, String consent) {
    }

    static final Room CLINICIANS = new Room(List.of(), false, EnumSet.allOf(InformationCategory.class));

    public boolean clinicians() {
        return guests.isEmpty();
    }

    boolean may(InformationCategory category) {
        return !heldBack && open.contains(category);
    }

    /** Those without consent, by name. */
    public String without() {
        return String.join("; ", guests.stream().filter(guest -> !guest.inForce()).map(Guest::words).toList());
    }

    public String all() {
        return String.join("; ", guests.stream().map(Guest::words).toList());
    }
}
