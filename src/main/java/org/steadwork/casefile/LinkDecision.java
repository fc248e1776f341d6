package org.steadwork.casefile;

/** What the clinician decided about two cards of the map. */
public enum LinkDecision {
    /** Seen together; not "caused by". */
    CONFIRMED("confirmed"),
    REJECTED("rejected");

    private final String label;

    LinkDecision(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
