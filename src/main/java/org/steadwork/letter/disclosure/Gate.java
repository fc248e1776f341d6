package org.steadwork.letter.disclosure;

/** The state, on one day, of the consent to disclose to one named reader. Only {@link #IN_FORCE} opens the gate. */
public enum Gate {
    IN_FORCE("in force"), NONE("not given"), NOT_YET("not in force yet"), EXPIRED("run out"), WITHDRAWN("withdrawn"),
    UNKNOWN("not known");

    private final String label;

    Gate(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
