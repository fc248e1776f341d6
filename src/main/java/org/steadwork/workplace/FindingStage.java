package org.steadwork.workplace;

/** How far a finding has come: found, advised, agreed with somebody, done, checked. */
public enum FindingStage {
    FOUND("found"), ADVISED("advised"), AGREED("agreed"), DONE("done"), CHECKED("checked");

    private final String label;

    FindingStage(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
