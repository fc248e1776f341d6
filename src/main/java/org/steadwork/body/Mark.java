package org.steadwork.body;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is marked in one zone: how much it hurts and what it feels like.
 *
 * @param zone  key of the zone
 * @param pain  0 to 10, or null when not asked; null is never 0
 * @param kinds kinds of symptom, empty when not said
 */
public record Mark(String zone, Integer pain, Set<SymptomKind> kinds) {

    public Mark {
        Objects.requireNonNull(zone, "zone");
        if (pain != null && !(pain >= 0 && pain <= 10)) {
            throw new IllegalArgumentException("Pain must be a whole number from 0 to 10, but was " + pain);
        }
        Set<SymptomKind> sorted = EnumSet.noneOf(SymptomKind.class);
        sorted.addAll(kinds);
        kinds = Collections.unmodifiableSet(sorted);
    }

    /** True when the zone is said to hurt but nobody said how; with no pain there is nothing to say. */
    public boolean kindNotSaid() {
        return kinds.isEmpty() && (pain == null || pain > 0);
    }

    /** Returns the mark in words, the same on the drawing, in the list and in print: "pain 4 of 10, ache". */
    public String words() {
        // "no pain" beside a kind of symptom would read as if there were none
        String amount = pain == null ? "pain not asked" : pain == 0 && kinds.isEmpty() ? "no pain" : "pain " + pain + " of 10";
        if (kindNotSaid()) {
            return amount + ", kind not said";
        }
        String said = kinds.stream().map(SymptomKind::label).collect(Collectors.joining(", "));
        return said.isEmpty() ? amount : amount + ", " + said;
    }
}
