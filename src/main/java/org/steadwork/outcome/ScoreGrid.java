package org.steadwork.outcome;

import java.time.LocalDate;
import java.util.List;

/**
 * The scores of a case as a table: a row a measure or activity, a column a day, the last column for the day of entry.
 *
 * @param days the earlier days shown, in order
 * @param version changes when any value of the day of entry changes
 */
public record ScoreGrid(long caseId, LocalDate on, List<LocalDate> days, List<Row> rows, int version) {

    /**
     * One row.
     *
     * @param cells what stands under each earlier day, a value or the word for its absence
     * @param field the name of the entry field, or null when the measure is entered by its items
     * @param now the value of the day of entry, blank for none
     * @param href where the items are entered, or null
     * @param min and {@code max} the lowest and highest answer of a single rating
     * @param due whether its schedule asks for it on the day of entry
     * @param reported what the symptom report of the day says, blank when it does not
     */
    public record Row(String label, String note, List<Cell> cells, String field, String now, String unit, String href, String absent,
            String reported, String change, String words, int min, int max, boolean due) {
    }

    /** A value, or the word that says why there is none. */
    public record Cell(String text, boolean value) {
    }
}
