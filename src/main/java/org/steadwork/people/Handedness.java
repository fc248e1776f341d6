package org.steadwork.people;

/** The hand a person prefers. */
public enum Handedness {
    RIGHT("right-handed"), LEFT("left-handed"), BOTH("uses both hands"), NOT_RECORDED("handedness not recorded");

    private final String label;

    Handedness(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
