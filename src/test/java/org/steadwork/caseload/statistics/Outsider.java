package org.steadwork.caseload.statistics;

import java.util.Arrays;

/**
 * A reader who tries every table of whole numbers that agrees with what is shown. Shares nothing with the product's way of ranges: plain
 * enumeration with a look at the totals.
 */
final class Outsider {

    private final int rows;
    private final int columns;
    private final boolean[][] hidden;
    private final int[][] shown;
    private final int[][] least;
    private final int[][] most;

    /**
     * Sees what is shown.
     *
     * @param shown counts with totals; those of hidden cells are not looked at
     * @param least what the reader knows each inner cell to be at least
     * @param most up to where inner cells are tried
     */
    Outsider(boolean[][] hidden, int[][] shown, int[][] least, int[][] most) {
        this.hidden = hidden;
        this.shown = shown;
        this.least = least;
        this.most = most;
        this.rows = hidden.length - 1;
        this.columns = hidden[0].length - 1;
    }

    /**
     * How many values of a hidden cell or total, next to one another and to the true one, occur among the tables that agree; stops at
     * enough. A gap between possible values would be counted as too few.
     */
    int valuesOf(int row, int column, int truth, int enough) {
        int found = 0;
        for (int value = truth; found < enough && agrees(row, column, value); value++) {
            found++;
        }
        for (int value = truth - 1; found < enough && agrees(row, column, value); value--) {
            found++;
        }
        return found;
    }

    private boolean agrees(int row, int column, int value) {
        if (value < 0 || row < rows && column < columns && value < least[row][column]) {
            return false;
        }
        boolean[][] unknown = Arrays.stream(hidden).map(boolean[]::clone).toArray(boolean[][]::new);
        int[][] counts = Arrays.stream(shown).map(int[]::clone).toArray(int[][]::new);
        unknown[row][column] = false;
        counts[row][column] = value;
        return exists(unknown, counts, new int[rows][columns], 0, 0);
    }

    private boolean exists(boolean[][] unknown, int[][] counts, int[][] tried, int place, int sum) {
        if (place == rows * columns) {
            return unknown[rows][columns] || sum == counts[rows][columns];
        }
        int row = place / columns;
        int column = place % columns;
        int from = unknown[row][column] ? least[row][column] : counts[row][column];
        int to = unknown[row][column] ? most[row][column] : counts[row][column];
        if (!unknown[row][columns]) {
            int left = counts[row][columns];
            for (int before = 0; before < column; before++) {
                left -= tried[row][before];
            }
            to = Math.min(to, left);
            from = column == columns - 1 ? Math.max(from, left) : from;
        }
        if (!unknown[rows][column]) {
            int left = counts[rows][column];
            for (int above = 0; above < row; above++) {
                left -= tried[above][column];
            }
            to = Math.min(to, left);
            from = row == rows - 1 ? Math.max(from, left) : from;
        }
        if (!unknown[rows][columns]) {
            int left = counts[rows][columns] - sum;
            to = Math.min(to, left);
            from = place == rows * columns - 1 ? Math.max(from, left) : from;
        }
        for (int value = from; value <= to; value++) {
            tried[row][column] = value;
            if (exists(unknown, counts, tried, place + 1, sum + value)) {
                return true;
            }
        }
        tried[row][column] = 0;
        return false;
    }
}
