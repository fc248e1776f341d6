package org.steadwork.caseload.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class HiddenRangesTest {

    private static final int MOST_VALUES = 6;

    /** The two greatest flows against trying every table: exact for any cells hidden, totals among them. */
    @Test
    void rangesAreExactlyThoseOfTryingEveryTable() {
        Random random = new Random(1980);
        int pinned = 0;
        int free = 0;
        for (int round = 0; round < 1500; round++) {
            int rows = 1 + random.nextInt(3);
            int columns = 1 + random.nextInt(3);
            int[][] counts = withTotals(random, rows, columns);
            boolean[][] hidden = new boolean[rows + 1][columns + 1];
            HiddenRanges ranges = new HiddenRanges(rows + 1, columns + 1);
            int[][] most = new int[rows][columns];
            for (int row = 0; row <= rows; row++) {
                for (int column = 0; column <= columns; column++) {
                    hidden[row][column] = random.nextInt(row == rows || column == columns ? 4 : 2) == 0;
                    if (hidden[row][column]) {
                        ranges.hide(row, column, HiddenRanges.FREELY, counts[row][column]);
                    }
                    if (row < rows && column < columns) {
                        most[row][column] = counts[row][column] + MOST_VALUES;
                    }
                }
            }
            Outsider outsider = new Outsider(hidden, counts, new int[rows][columns], most);
            for (int row = 0; row <= rows; row++) {
                for (int column = 0; column <= columns; column++) {
                    if (hidden[row][column]) {
                        int values = outsider.valuesOf(row, column, counts[row][column], MOST_VALUES);
                        for (int asked = 1; asked <= MOST_VALUES; asked++) {
                            assertEquals(asked <= values, ranges.canTake(row, column, asked), asked + " values of row " + row + ", column " + column
                                    + " of " + Arrays.deepToString(counts) + " hidden " + Arrays.deepToString(hidden));
                        }
                        pinned += values == 1 ? 1 : 0;
                        free += values == MOST_VALUES ? 1 : 0;
                    }
                }
            }
        }
        assertTrue(pinned > 500 && free > 500, pinned + " pinned down, " + free + " free");
    }

    private static int[][] withTotals(Random random, int rows, int columns) {
        int[][] counts = new int[rows + 1][columns + 1];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int count = random.nextInt(6);
                counts[row][column] = count;
                counts[row][columns] += count;
                counts[rows][column] += count;
                counts[rows][columns] += count;
            }
        }
        return counts;
    }
}
