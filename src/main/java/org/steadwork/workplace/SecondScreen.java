package org.steadwork.workplace;

/** What a second screen is used for. */
enum SecondScreen {
    NONE("there is none"), SIDE("looked at now and then"), EQUAL("used about as much as the first");

    private final String label;

    SecondScreen(String label) {
        this.label = label;
    }

    String label() {
        return label;
    }
}
