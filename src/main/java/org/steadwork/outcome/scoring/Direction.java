package org.steadwork.outcome.scoring;

/** Which way of a scale is the better one. */
public enum Direction {
    LOWER_BETTER("lower is better"), HIGHER_BETTER("higher is better");

    private final String words;

    Direction(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Returns the improvement from one score to a later one, in the unit of the scale; positive is better. */
    public double improvement(double from, double to) {
        return this == LOWER_BETTER ? from - to : to - from;
    }
}
