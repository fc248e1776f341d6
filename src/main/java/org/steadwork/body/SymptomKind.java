package org.steadwork.body;

import java.util.Locale;

/** A kind of symptom as the patient describes it; several may be felt in one zone. */
public enum SymptomKind {
    /** Drawn as diagonal lines. */
    ACHE("ache"),
    /** Drawn solid. */
    SHARP_OR_BURNING("sharp or burning"),
    /** Drawn as dots. */
    TINGLING_OR_NUMB("tingling or numb"),
    /** Drawn as level bars. */
    STIFFNESS("stiffness");

    private final String label;

    SymptomKind(String label) {
        this.label = label;
    }

    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String label() {
        return label;
    }

    /** Returns the kind of a key; throws {@link IllegalArgumentException} for any other text. */
    public static SymptomKind of(String key) {
        for (SymptomKind kind : values()) {
            if (kind.key().equals(key)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("There is no kind of symptom '" + key + "'");
    }
}
