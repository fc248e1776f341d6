package org.steadwork.letter.disclosure;

/** A kind of reader: what a letter may hold depends on which of these it is for. */
public enum Recipient {
    WORKER("the worker"), EMPLOYER("an employer"), DOCTOR("a doctor"), SPECIALIST("a specialist"),
    INSURER("an insurer or claims body"), CASE_REVIEW("a case review among clinicians");

    private final String label;

    Recipient(String label) {
        this.label = label;
    }

    /** Returns the words for this reader in the middle of a sentence. */
    public String label() {
        return label;
    }

    /** True when nothing may go to this reader without a consent in force or a recorded override. */
    public boolean needsConsent() {
        return this != WORKER;
    }
}
