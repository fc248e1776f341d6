package org.steadwork.letter.disclosure;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A consent to disclose to one named reader, as it was recorded.
 *
 * @param from      first day on which it holds
 * @param until     last day on which it holds
 * @param withdrawn day from which it no longer holds, that day included, whatever {@code until} says
 * @param ticked    the categories the worker ticked; what is not in here was not agreed to
 */
public record GivenConsent(LocalDate from, LocalDate until, Optional<LocalDate> withdrawn, Set<InformationCategory> ticked) {
    public GivenConsent {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(until, "until");
        Objects.requireNonNull(withdrawn, "withdrawn");
        ticked = Set.copyOf(ticked);
        if (until.isBefore(from)) {
            throw new IllegalArgumentException("A consent from " + from + " cannot end earlier, on " + until);
        }
    }

    /** Returns the state of the gate on a day. A withdrawal outranks everything else. */
    public Gate on(LocalDate day) {
        if (withdrawn.isPresent() && !day.isBefore(withdrawn.get())) {
            return Gate.WITHDRAWN;
        }
        if (day.isBefore(from)) {
            return Gate.NOT_YET;
        }
        return day.isAfter(until) ? Gate.EXPIRED : Gate.IN_FORCE;
    }
}
