package org.steadwork.caseload.statistics;

/**
 * Counts of people in rows and columns with every total: the row after the last holds the totals of the columns, the column after the
 * last those of the rows, and where both meet stands the grand total. Immutable.
 */
public final class CountTable {

    private final int[][] counts;

    private CountTable(int[][] counts) {
        this.counts = counts;
    }

    /**
     * Adds the totals to a table.
     *
     * @param cells rows of counts of equal length, each 0 or more; no row, no column or a negative count throws {@link IllegalArgumentException}
     */
    public static CountTable of(int[][] cells) {
        int rows = cells.length;
        int columns = rows == 0 ? 0 : cells[0].length;
        if (columns == 0) {
            throw new IllegalArgumentException("A table needs at least one row and one column");
        }
        int[][] counts = new int[rows + 1][columns + 1];
        for (int row = 0; row < rows; row++) {
            if (cells[row].length != columns) {
                throw new IllegalArgumentException("Row " + row + " has " + cells[row].length + " columns, but the first has " + columns);
            }
            for (int column = 0; column < columns; column++) {
                int count = cells[row][column];
                if (count < 0) {
                    throw new IllegalArgumentException("A count must be 0 or more, but was " + count + " in row " + row);
                }
                counts[row][column] = count;
                counts[row][columns] = Math.addExact(counts[row][columns], count);
                counts[rows][column] = Math.addExact(counts[rows][column], count);
                counts[rows][columns] = Math.addExact(counts[rows][columns], count);
            }
        }
        return new CountTable(counts);
    }

    /** Returns the number of rows, totals not counted. */
    public int rows() {
        return counts.length - 1;
    }

    /** Returns the number of columns, totals not counted. */
    public int columns() {
        return counts[0].length - 1;
    }

    /** Returns a count; row {@link #rows()} and column {@link #columns()} are the totals. */
    public int at(int row, int column) {
        return counts[row][column];
    }

    /** Returns the count of everyone. */
    public int total() {
        return at(rows(), columns());
    }
}
