package org.steadwork.kernel;

/** An answer to a screening question. Neither {@link #UNKNOWN} nor {@link #NOT_ASKED} ever counts as {@link #NO}. */
public enum Answer {
    YES("yes"), NO("no"), UNKNOWN("unknown"), NOT_ASKED("not asked");

    private final String label;

    Answer(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** True when the question has no answer that settles it. */
    public boolean open() {
        return this == UNKNOWN || this == NOT_ASKED;
    }
}
