package org.steadwork.redflag.rules;

/** What a screen is for: the full set (first visit, no progress, discharge, change), or the short set of a review. */
public enum Occasion {
    FULL("full set"), REVIEW("short set");

    private final String label;

    Occasion(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
