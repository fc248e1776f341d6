package org.steadwork.letter.disclosure;

/** A ground on which something may leave without consent. Each needs a named person, a reason in words, and the minimum of facts. */
public enum Ground {
    VITAL_INTERESTS("threat to life or of serious harm to the worker, and no consent possible"),
    RISK_TO_OTHERS("serious risk to others, after advice from a senior or legal adviser"),
    LAW("law, court order, notifiable disease or incident, or safeguarding");

    private final String label;

    Ground(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
