package org.steadwork.caseload.statistics;

import org.steadwork.caseload.statistics.SmallNumbers.Columns;

/**
 * Chooses the cells to withhold: first the small ones, then for each that totals would give away three more that form a rectangle with
 * it, the cheapest in people hidden.
 *
 * <p>Source: hiding the corners of rectangles, Repsilber 1999, Forum der Bundesstatistik 31; that the rectangle must leave room enough is
 * checked here with the exact ranges of {@link HiddenRanges}.
 */
final class Withholding {

    // a zero tells little and is hidden only when nothing else protects; the grand total last of all
    private static final long COST_OF_A_ZERO = 1L << 32;
    private static final long COST_OF_THE_GRAND_TOTAL = 1L << 40;

    private final CountTable table;
    private final SmallNumbers rule;
    private final boolean[][] hidden;

    private Withholding(CountTable table, SmallNumbers rule, boolean[][] hiddenBefore) {
        this.table = table;
        this.rule = rule;
        this.hidden = new boolean[table.rows() + 1][table.columns() + 1];
        for (int row = 0; row < hidden.length; row++) {
            for (int column = 0; column < hidden[row].length; column++) {
                hidden[row][column] = hiddenBefore[row][column] || isTelling(row, column);
            }
        }
    }

    /** Returns which cells, totals among them, to withhold: at least those that were before. */
    static boolean[][] of(CountTable table, SmallNumbers rule, boolean[][] hiddenBefore) {
        Withholding withholding = new Withholding(table, rule, hiddenBefore);
        withholding.protect();
        return withholding.hidden;
    }

    private boolean isTelling(int row, int column) {
        int count = table.at(row, column);
        if (rule.isSmall(table.total()) || wholeRowInOneColumn(table.rows())) {
            return true;
        }
        boolean smallRow = rule.isSmall(table.at(row, table.columns()));
        boolean zeroMatters = table.at(table.rows(), column) > 0;
        return rule.isSmall(count) || row < table.rows() && column < table.columns() && zeroMatters && (smallRow || wholeRowInOneColumn(row));
    }

    private boolean wholeRowInOneColumn(int row) {
        if (rule.columns() == Columns.PLACES || table.columns() < 2) {
            return false;
        }
        int total = table.at(row, table.columns());
        for (int column = 0; column < table.columns(); column++) {
            if (total > 0 && table.at(row, column) == total) {
                return true;
            }
        }
        return false;
    }

    private void protect() {
        for (int row = 0; row < hidden.length; row++) {
            for (int column = 0; column < hidden[row].length; column++) {
                if (hidden[row][column] && !ranges().canTake(row, column, rule.fewest())) {
                    hideCheapestRectangle(row, column);
                }
            }
        }
    }

    private HiddenRanges ranges() {
        HiddenRanges ranges = new HiddenRanges(hidden.length, hidden[0].length);
        for (int row = 0; row < hidden.length; row++) {
            for (int column = 0; column < hidden[row].length; column++) {
                if (hidden[row][column]) {
                    ranges.hide(row, column, HiddenRanges.FREELY, room(row, column));
                }
            }
        }
        return ranges;
    }

    /** How much less a cell could be to a reader who knows that zeros are seldom withheld. */
    private int room(int row, int column) {
        return Math.max(0, table.at(row, column) - 1);
    }

    private void hideCheapestRectangle(int row, int column) {
        long cheapest = Long.MAX_VALUE;
        int bestRow = -1;
        int bestColumn = -1;
        for (int otherRow = 0; otherRow < hidden.length; otherRow++) {
            for (int otherColumn = 0; otherColumn < hidden[row].length; otherColumn++) {
                if (otherRow != row && otherColumn != column && leavesRoom(row, column, otherRow, otherColumn)) {
                    long cost = cost(row, otherColumn) + cost(otherRow, column) + cost(otherRow, otherColumn);
                    if (cost < cheapest) {
                        cheapest = cost;
                        bestRow = otherRow;
                        bestColumn = otherColumn;
                    }
                }
            }
        }
        hidden[row][bestColumn] = true;
        hidden[bestRow][column] = true;
        hidden[bestRow][bestColumn] = true;
    }

    /** Whether the rectangle by itself leaves the cell enough values; with both total lines it always does, for all corners rise together. */
    private boolean leavesRoom(int row, int column, int otherRow, int otherColumn) {
        boolean besideRises = column == table.columns() || otherColumn == table.columns();
        boolean belowRises = row == table.rows() || otherRow == table.rows();
        int[] corners = {room(row, otherColumn), room(otherRow, column), room(otherRow, otherColumn)};
        boolean[] rises = {besideRises, belowRises, besideRises == belowRises};
        int up = HiddenRanges.FREELY;
        int down = room(row, column);
        for (int corner = 0; corner < corners.length; corner++) {
            if (rises[corner]) {
                down = Math.min(down, corners[corner]);
            } else {
                up = Math.min(up, corners[corner]);
            }
        }
        return up + down + 1 >= rule.fewest();
    }

    private long cost(int row, int column) {
        if (hidden[row][column]) {
            return 0;
        }
        if (row == table.rows() && column == table.columns()) {
            return COST_OF_THE_GRAND_TOTAL;
        }
        return table.at(row, column) == 0 ? COST_OF_A_ZERO : table.at(row, column);
    }
}
