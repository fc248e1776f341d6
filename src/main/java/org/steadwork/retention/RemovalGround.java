package org.steadwork.retention;

/** Why a person's record may go. */
enum RemovalGround {
    PERIOD_OVER("The period is over"), ASKED("The person asked for it, and the law allows it"), REGISTERED_WRONGLY("Registered by mistake");

    private final String label;

    RemovalGround(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
