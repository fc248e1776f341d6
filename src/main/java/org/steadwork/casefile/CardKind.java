package org.steadwork.casefile;

import java.util.Locale;

/** The column of the map a card stands in: where it hurts, what the work place does, what we do about it. */
public enum CardKind {
    SYMPTOM("symptom"), FINDING("finding"), ACTION("action");

    private final String label;

    CardKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
