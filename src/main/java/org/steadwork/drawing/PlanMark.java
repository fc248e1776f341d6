package org.steadwork.drawing;

import java.time.LocalDate;
import java.util.Objects;

/**
 * A change of the plan, marked on the time axis of a trend.
 *
 * @param text what changed in a few words, e.g. "Chin tucks added"; stands in the key under a large chart
 */
public record PlanMark(LocalDate date, Kind kind, String text) {

    /** What changed; each kind has a shape of its own, so that it shows without colour. */
    public enum Kind {
        PROGRAMME("Programme"), WORK_PLACE("Work place"), WORK_STATUS("Work status"), OTHER("Other");

        final String label;

        Kind(String label) {
            this.label = label;
        }
    }

    public PlanMark {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(kind, "kind");
        if (text.isBlank()) {
            throw new IllegalArgumentException("A change of the plan on " + date + " says what changed");
        }
    }

    /** The letter of the mark at a place in the order of dates: A to Z, then A2 to Z2 and so on. */
    static String letter(int place) {
        String letter = String.valueOf((char) ('A' + place % 26));
        return place < 26 ? letter : letter + (place / 26 + 1);
    }
}
