package org.steadwork.outcome;

/** How far a goal is reached; {@code mark} is the modifier of the status sign. */
public enum GoalState {
    NOT_YET("not yet", "open"), IN_PART("in part", "open"), MET("met", "done"), GIVEN_UP("given up", "none");

    private final String label;
    private final String mark;

    GoalState(String label, String mark) {
        this.label = label;
        this.mark = mark;
    }

    public String label() {
        return label;
    }

    public String mark() {
        return mark;
    }
}
