package org.steadwork.people;

/** Sex as recorded for the body-size equations; "not recorded" uses the equations made for both together. */
public enum Sex {
    FEMALE("female"), MALE("male"), NOT_RECORDED("not recorded");

    private final String label;

    Sex(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
