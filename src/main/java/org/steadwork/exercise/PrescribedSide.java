package org.steadwork.exercise;

import org.steadwork.exercise.dayplan.Exercise;

/** On which side of the body an exercise is done. */
public enum PrescribedSide {
    NONE("Not by side"), BOTH("Each side"), LEFT("Left side"), RIGHT("Right side");

    private final String label;

    PrescribedSide(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** How often the repetitions are done in a set: an exercise for each side done on one side only counts once. */
    public int sides(Exercise exercise) {
        int usual = exercise.dose().sides();
        boolean bySide = exercise.per().equals("side") || exercise.per().equals("leg");
        return switch (this) {
            case LEFT, RIGHT -> bySide ? 1 : usual;
            case BOTH -> Math.max(2, usual);
            case NONE -> usual;
        };
    }

    /** The side the catalogue means. */
    public static PrescribedSide usual(Exercise exercise) {
        return exercise.per().equals("side") || exercise.per().equals("leg") ? BOTH : NONE;
    }
}
