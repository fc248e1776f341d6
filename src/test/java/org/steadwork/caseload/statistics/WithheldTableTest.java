package org.steadwork.caseload.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.steadwork.caseload.statistics.SmallNumbers.Columns;

class WithheldTableTest {

    private static final SmallNumbers TEN = new SmallNumbers(SmallNumbers.USUAL_FEWEST, Columns.PLACES);

    /** Worked by hand: of 3, 14, 25 with total 42 the 3 is hidden and the 14 with it, for 42 − 39 would give it away. */
    @Test
    void theSmallestOtherCountIsWithheldToo() {
        assertEquals("- - 25 42", line(WithheldTable.of(CountTable.of(new int[][] {{3, 14, 25}}), TEN), 0));
    }

    @Test
    void aTableWithoutSmallCountsIsShownWhole() {
        WithheldTable table = WithheldTable.of(CountTable.of(new int[][] {{10, 14, 0}, {30, 11, 12}}), TEN);
        assertEquals("10 14 0 24", line(table, 0));
        assertEquals("40 25 12 77", line(table, 2));
    }

    @Test
    void aSmallGroupIsDroppedWithItsTotal() {
        WithheldTable table = WithheldTable.of(CountTable.of(new int[][] {{4, 0, 3}, {30, 20, 25}, {40, 50, 60}}), TEN);
        assertEquals("- - - -", line(table, 0));
        assertEquals(232, table.shown(3, 3).orElseThrow());
        assertTrue(table.shown(1, 3).isEmpty() ^ table.shown(2, 3).isEmpty(), () -> "one other total must hide the small one\n" + text(table));
    }

    @Test
    void nothingIsShownOfAGroupTooSmallAltogether() {
        WithheldTable table = WithheldTable.of(CountTable.of(new int[][] {{4, 0}, {2, 3}}), TEN);
        assertTrue(table.showsNothing());
        assertFalse(WithheldTable.of(CountTable.of(new int[][] {{0, 0}, {0, 0}}), TEN).showsNothing());
    }

    @Test
    void aFactTrueOfAWholeRowIsWithheldAndAPlaceIsNot() {
        CountTable counts = CountTable.of(new int[][] {{15, 0}, {20, 30}});
        assertEquals("15 0 15", line(WithheldTable.of(counts, TEN), 0));
        WithheldTable facts = WithheldTable.of(counts, new SmallNumbers(10, Columns.FACTS));
        assertTrue(facts.shown(0, 0).isEmpty() && facts.shown(0, 1).isEmpty(), () -> text(facts));
        assertTrue(WithheldTable.of(CountTable.of(new int[][] {{15, 0}, {20, 0}}), new SmallNumbers(10, Columns.FACTS)).showsNothing());
    }

    @Test
    void noWithheldCellCanBeGotBackFromTheTotals() {
        Random random = new Random(20261125);
        int withComplement = 0;
        for (int round = 0; round < 3000; round++) {
            SmallNumbers rule = new SmallNumbers(3 + random.nextInt(3), Columns.values()[random.nextInt(2)]);
            int[][] cells = random(random, 1 + random.nextInt(3), 1 + random.nextInt(3), 3 + random.nextInt(12));
            WithheldTable table = WithheldTable.of(CountTable.of(cells), rule);
            withComplement += assertProtected(table, rule) ? 1 : 0;
        }
        assertTrue(withComplement > 500, "tables with a withheld count that was not small itself: " + withComplement);
    }

    @Test
    void everySmallTableIsProtected() {
        SmallNumbers rule = new SmallNumbers(3, Columns.PLACES);
        for (int code = 0; code < 5 * 5 * 5 * 5 * 5 * 5; code++) {
            int[][] cells = new int[2][3];
            for (int i = 0, rest = code; i < 6; i++, rest /= 5) {
                cells[i / 3][i % 3] = rest % 5;
            }
            assertProtected(WithheldTable.of(CountTable.of(cells), rule), rule);
        }
    }

    /** The outsider is no dummy: without the second withholding it gets single values. */
    @Test
    void smallCountsWithheldAloneAreGotBack() {
        CountTable counts = CountTable.of(new int[][] {{3, 14, 25}, {12, 15, 16}});
        boolean[][] alone = new boolean[3][4];
        alone[0][0] = true;
        assertEquals(1, outsider(WithheldTable.kept(counts, alone), 0).valuesOf(0, 0, 3, 10));
    }

    @Test
    void aLargeTableIsProtectedInTime() {
        Random random = new Random(5);
        int[][] cells = random(random, 60, 12, 60);
        WithheldTable table = WithheldTable.of(CountTable.of(cells), TEN);
        for (int row = 0; row <= 60; row++) {
            for (int column = 0; column <= 12; column++) {
                int count = table.counts().at(row, column);
                assertTrue(count == 0 || count >= 10 || table.shown(row, column).isEmpty(), "row " + row + " column " + column);
            }
        }
        assertTrue(table.shown(60, 12).isPresent());
    }

    @Test
    void impossibleTablesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> CountTable.of(new int[0][0]));
        assertThrows(IllegalArgumentException.class, () -> CountTable.of(new int[][] {{1, 2}, {1}}));
        assertThrows(IllegalArgumentException.class, () -> CountTable.of(new int[][] {{1, -2}}));
        assertThrows(IllegalArgumentException.class, () -> new SmallNumbers(2, Columns.PLACES));
        assertThrows(IllegalArgumentException.class, () -> WithheldTable.kept(CountTable.of(new int[][] {{1}}), new boolean[1][1]));
    }

    /** Every withheld count must have as many possible values as the smallest count shown; also for one who knows that it is not 0. */
    private static boolean assertProtected(WithheldTable table, SmallNumbers rule) {
        boolean complement = false;
        CountTable counts = table.counts();
        for (int row = 0; row <= counts.rows(); row++) {
            for (int column = 0; column <= counts.columns(); column++) {
                int count = counts.at(row, column);
                if (table.shown(row, column).isPresent()) {
                    assertTrue(count == 0 || count >= rule.fewest(), () -> text(table));
                    continue;
                }
                complement |= count >= rule.fewest();
                for (int least = 0; least <= 1; least++) {
                    int values = outsider(table, least).valuesOf(row, column, count, rule.fewest());
                    assertEquals(rule.fewest(), values,
                            "values of row " + row + " column " + column + " of " + Arrays.deepToString(cells(counts)) + "\n" + text(table));
                }
            }
        }
        return complement;
    }

    private static Outsider outsider(WithheldTable table, int knownToBeAtLeast) {
        CountTable counts = table.counts();
        int[][] least = new int[counts.rows()][counts.columns()];
        int[][] most = new int[counts.rows()][counts.columns()];
        for (int row = 0; row < counts.rows(); row++) {
            for (int column = 0; column < counts.columns(); column++) {
                least[row][column] = Math.min(knownToBeAtLeast, counts.at(row, column));
                most[row][column] = counts.at(row, column) + 10;
            }
        }
        return new Outsider(table.withheld(), cells(counts), least, most);
    }

    private static int[][] cells(CountTable counts) {
        int[][] cells = new int[counts.rows() + 1][counts.columns() + 1];
        for (int row = 0; row <= counts.rows(); row++) {
            for (int column = 0; column <= counts.columns(); column++) {
                cells[row][column] = counts.at(row, column);
            }
        }
        return cells;
    }

    private static int[][] random(Random random, int rows, int columns, int below) {
        int[][] cells = new int[rows][columns];
        for (int[] row : cells) {
            for (int column = 0; column < columns; column++) {
                row[column] = random.nextInt(4) == 0 ? 0 : random.nextInt(below);
            }
        }
        return cells;
    }

    private static String line(WithheldTable table, int row) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column <= table.counts().columns(); column++) {
            line.append(column == 0 ? "" : " ").append(table.shown(row, column).isPresent() ? table.shown(row, column).getAsInt() : "-");
        }
        return line.toString();
    }

    private static String text(WithheldTable table) {
        StringBuilder text = new StringBuilder();
        for (int row = 0; row <= table.counts().rows(); row++) {
            text.append(line(table, row)).append('\n');
        }
        return text.toString();
    }
}
