package org.steadwork.redflag.rules;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** How fast a medical opinion is wanted, from the least to the most urgent; the order of the constants is the order of urgency. */
public enum Urgency {
    WATCH("watch"),
    DISCUSS_DOCTOR("discuss with a doctor"),
    URGENT_2_WEEKS("urgent, within 2 weeks"),
    SAME_DAY("same day"),
    EMERGENCY_NOW("emergency now");

    private final String label;

    Urgency(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    public boolean atLeast(Urgency other) {
        return compareTo(other) >= 0;
    }

    /** True when somebody has to be phoned, and the call recorded, before the visit can be signed. */
    public boolean demandsCall() {
        return atLeast(SAME_DAY);
    }

    /** Returns the worst of the levels; empty when there is none. */
    public static Optional<Urgency> highest(Collection<Urgency> levels) {
        return levels.stream().max(Comparator.naturalOrder());
    }
}
