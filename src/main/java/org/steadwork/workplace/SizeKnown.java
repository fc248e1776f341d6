package org.steadwork.workplace;

/** How a size in the register was got to know. */
public enum SizeKnown {
    MEASURED("measured"), TOLD("told, not measured");

    private final String label;

    SizeKnown(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
