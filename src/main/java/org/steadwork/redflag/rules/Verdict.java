package org.steadwork.redflag.rules;

/** What a screen says: clear only when every due question is "no". */
public enum Verdict {
    CLEAR("clear"), INCOMPLETE("incomplete"), POSITIVE("positive");

    private final String label;

    Verdict(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
