package org.steadwork.ownpage;

/** What had become of an exercise by the time a session of it was told. */
public enum Meanwhile {
    SUSPENDED("suspended by a red flag"), ENDED("ended");

    private final String label;

    Meanwhile(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
