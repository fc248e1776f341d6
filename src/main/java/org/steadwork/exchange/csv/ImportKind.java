package org.steadwork.exchange.csv;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;

/**
 * A kind of file that can be taken in. Each is one bean of this type: a feature that has something to take in adds its own, and the page,
 * the dry run, the template file and the progress are there.
 */
public interface ImportKind {

    /**
     * A column of the file.
     *
     * @param name in the header, lower case with underscores
     * @param required a file without it is refused; one row may still be refused for an empty cell
     */
    record Column(String name, boolean required, String meaning, String example) {
    }

    /** Something wrong with one cell; {@code column} is null when it is about the whole row. */
    record Problem(int row, String column, String message) {
    }

    /** Somebody or something that may be there already; a clinician decides whether the row is another one. */
    record LikelyDouble(int row, String what, String where) {
    }

    /** What the check of a file gives; {@code store} puts everything in, within the running transaction. */
    interface Checked {

        List<Problem> problems();

        List<LikelyDouble> doubles();

        /**
         * Stores every row.
         *
         * @param withDoubles also the rows that are likely doubles
         * @param stored told how many rows are stored so far
         * @return how many rows were stored; rows left out are not counted
         */
        int store(boolean withDoubles, IntConsumer stored);
    }

    /** A row of the file for {@link #check}. */
    record Row(int number, Map<String, String> cells) {

        /** Returns the cell, empty when it is not there. */
        public String cell(String column) {
            return cells.getOrDefault(column, "").strip();
        }
    }

    /** Short name in addresses. */
    String key();

    /** Name for people: Patients. */
    String label();

    List<Column> columns();

    /**
     * Checks every row against what is stored now and changes nothing.
     *
     * @param checked told how many rows are checked so far
     */
    Checked check(List<Row> rows, LocalDate today, IntConsumer checked);
}
