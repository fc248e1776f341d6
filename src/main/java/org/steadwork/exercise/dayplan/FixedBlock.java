package org.steadwork.exercise.dayplan;

/**
 * A part of the working day that stands already.
 *
 * @param from minutes after midnight, included
 * @param to   minutes after midnight, excluded; after {@code from}
 */
public record FixedBlock(int from, int to, Kind kind, String label) {

    /** What the body does meanwhile, and whether an exercise can be done. */
    public enum Kind {
        /** Sitting goes on. */
        MEETING("Meeting, seated"),
        /** Sitting ends, exercises have no place. */
        ON_FEET("On the feet"),
        /** Sitting ends, and what is due can be done at its beginning. */
        REST("Rest, such as lunch");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    public FixedBlock {
        if (!(from >= 0 && from < to && to <= DayFrame.LONGEST_DAY)) {
            throw new IllegalArgumentException("A fixed time runs forward within one day, but was " + from + " to " + to + " minutes after midnight");
        }
    }

    boolean touches(int start, int end) {
        return start < to && end > from;
    }
}
