package org.steadwork.workplace;

/** What the register keeps: desks and chairs. */
public enum FurnitureKind {
    DESK("desk"), CHAIR("chair");

    private final String label;

    FurnitureKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
