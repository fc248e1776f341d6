package org.steadwork.letter.disclosure;

/** What the matrix says about one category for one kind of reader, once the gate is open. */
public enum Rule {
    /** Goes with the consent to write to this reader. */
    ALLOWED("with consent"),
    /** Goes only if the worker ticked this category. */
    EXPLICIT("only if ticked"),
    /** Never goes to this kind of reader through the clinic, whatever was ticked. */
    NEVER("never");

    private final String label;

    Rule(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
