package org.steadwork.caseload.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.steadwork.caseload.statistics.SmallNumbers.Columns;

class ReportSeriesTest {

    private static final SmallNumbers TEN = new SmallNumbers(SmallNumbers.USUAL_FEWEST, Columns.PLACES);
    private static final int[][] FIRST = {{3, 14, 45}, {12, 31, 38}};

    @Test
    void oneMorePersonChangesNothingThatIsShown() {
        ReportSeries series = ReportSeries.startingWith(CountTable.of(FIRST), TEN);
        for (int row = 0; row < 2; row++) {
            for (int column = 0; column < 3; column++) {
                int[][] later = copy(FIRST);
                later[row][column]++;
                assertSame(series, series.offer(CountTable.of(later)), "one more in row " + row + ", column " + column);
            }
        }
    }

    @Test
    void oneWhoMovedWithinTheTotalsChangesNothingThatIsShown() {
        ReportSeries series = ReportSeries.startingWith(CountTable.of(new int[][] {{13, 14, 25}, {12, 31, 18}}), TEN);
        assertSame(series, series.offer(CountTable.of(new int[][] {{12, 15, 25}, {12, 31, 18}})));
    }

    @Test
    void enoughNewPeopleMakeANewReport() {
        ReportSeries series = ReportSeries.startingWith(CountTable.of(FIRST), TEN);
        ReportSeries next = series.offer(CountTable.of(new int[][] {{3, 14, 55}, {12, 31, 48}}));
        assertNotSame(series, next);
        assertEquals(55, next.latest().shown(0, 2).orElseThrow());
        assertEquals(2, next.published().size());
        assertEquals(List.of(true, true), List.of(next.latest().shown(0, 0).isEmpty(), next.latest().shown(0, 1).isEmpty()));
    }

    @Test
    void aGapStaysAGap() {
        ReportSeries series = ReportSeries.startingWith(CountTable.of(FIRST), TEN);
        ReportSeries next = series.offer(CountTable.of(new int[][] {{33, 44, 75}, {42, 61, 68}}));
        assertNotSame(series, next);
        assertTrue(next.latest().shown(0, 0).isEmpty());
        assertTrue(next.latest().shown(1, 2).isPresent());
    }

    /** 11 more in the row's total and 10 more in the one cell shown: the two withheld cells would have one more between them. */
    @Test
    void whatATotalGivesAwayOfItsGapsCountsToo() {
        ReportSeries series = ReportSeries.startingWith(CountTable.of(FIRST), TEN);
        assertSame(series, series.offer(CountTable.of(new int[][] {{4, 14, 55}, {22, 41, 48}})));
    }

    /** A ring of six gaps: every line's gaps together grow by 10 or 18, yet whoever knows that none shrank finds 0, 1 or 2 for a growth of 1. */
    @Test
    void aChangePinnedDownRoundARingOfGapsCountsToo() {
        boolean[][] ring = {{true, true, false, false}, {false, true, true, false}, {true, false, true, false}, {false, false, false, false}};
        CountTable before = CountTable.of(new int[][] {{20, 20, 50}, {50, 20, 20}, {20, 50, 20}});
        ReportSeries series = new ReportSeries(TEN, List.of(WithheldTable.kept(before, ring)));
        assertSame(series, series.offer(CountTable.of(new int[][] {{21, 29, 50}, {50, 29, 21}, {29, 50, 29}})));
        assertNotSame(series, series.offer(CountTable.of(new int[][] {{30, 30, 50}, {50, 30, 30}, {30, 50, 30}})));
    }

    @Test
    void laterReportsAreComparedWithEveryEarlierOne() {
        ReportSeries series = ReportSeries.startingWith(CountTable.of(new int[][] {{40, 40}}), TEN).offer(CountTable.of(new int[][] {{52, 52}}));
        assertEquals(2, series.published().size());
        assertSame(series, series.offer(CountTable.of(new int[][] {{41, 41}})), "one more each than in the first");
    }

    @Test
    void aFirstReportThatShowedNothingIsForgotten() {
        ReportSeries series = ReportSeries.startingWith(CountTable.of(new int[][] {{2, 3}}), TEN);
        assertTrue(series.latest().showsNothing());
        assertFalse(series.offer(CountTable.of(new int[][] {{20, 30}})).latest().showsNothing());
    }

    @Test
    void aSeriesKeepsItsSizeAndCanBeTakenUpAgain() {
        ReportSeries series = ReportSeries.startingWith(CountTable.of(FIRST), TEN);
        assertThrows(IllegalArgumentException.class, () -> series.offer(CountTable.of(new int[][] {{1}})));
        assertThrows(IllegalArgumentException.class, () -> new ReportSeries(TEN, List.of()));
        ReportSeries again = new ReportSeries(TEN, List.of(WithheldTable.kept(series.latest().counts(), series.latest().withheld())));
        assertSame(again, again.offer(CountTable.of(new int[][] {{3, 14, 46}, {12, 31, 38}})));
    }

    /** Month after month a few new people; whenever fewer than the rule's number are new since a report, the page must not change. */
    @Test
    void twoReportsNeverDifferByFewPeople() {
        Random random = new Random(20261125);
        int[] reports = {0};
        int[] frozen = {0};
        for (int round = 0; round < 600; round++) {
            SmallNumbers rule = new SmallNumbers(3 + random.nextInt(3), Columns.PLACES);
            int[][] cells = random(random, 1 + random.nextInt(3), 1 + random.nextInt(3), 12);
            ReportSeries series = ReportSeries.startingWith(CountTable.of(cells), rule);
            for (int month = 0; month < 12; month++) {
                int newcomers = random.nextInt(month % 3 == 0 ? 30 : 4);
                for (int i = 0; i < newcomers; i++) {
                    cells[random.nextInt(cells.length)][random.nextInt(cells[0].length)]++;
                }
                ReportSeries next = series.offer(CountTable.of(copy(cells)));
                if (next == series) {
                    frozen[0]++;
                    continue;
                }
                List<WithheldTable> before = series.latest().showsNothing() ? List.of() : series.published();
                before.forEach(earlier -> assertApart(earlier, next.latest(), rule));
                reports[0] += before.isEmpty() ? 0 : 1;
                series = next;
            }
        }
        assertTrue(reports[0] > 100, "new reports: " + reports[0]);
        assertTrue(frozen[0] > 1000, "months in which the last report stood: " + frozen[0]);
    }

    /** A window of time that moves on: people come in and drop out. What is shown, and each line's gaps together, move by none or by enough. */
    @Test
    void peopleDroppingOutOfAWindowCountToo() {
        Random random = new Random(42);
        int reports = 0;
        for (int round = 0; round < 400; round++) {
            SmallNumbers rule = new SmallNumbers(3 + random.nextInt(3), Columns.PLACES);
            int[][] cells = random(random, 2, 3, 25);
            ReportSeries series = ReportSeries.startingWith(CountTable.of(cells), rule);
            for (int month = 0; month < 12; month++) {
                int[][] moved = copy(cells);
                int moves = 1 + random.nextInt(6);
                for (int i = 0; i < moves; i++) {
                    int row = random.nextInt(2);
                    int column = random.nextInt(3);
                    moved[row][column] = Math.max(0, moved[row][column] + random.nextInt(21) - 10);
                }
                ReportSeries next = series.offer(CountTable.of(moved));
                if (next != series && !series.latest().showsNothing()) {
                    series.published().forEach(earlier -> assertShownApart(earlier, next.latest(), rule));
                    reports++;
                }
                series = next;
            }
        }
        assertTrue(reports > 100, "new reports: " + reports);
    }

    private static void assertShownApart(WithheldTable earlier, WithheldTable later, SmallNumbers rule) {
        int columns = later.counts().columns();
        for (int row = 0; row <= later.counts().rows(); row++) {
            int gaps = 0;
            for (int column = 0; column <= columns; column++) {
                int change = later.counts().at(row, column) - earlier.counts().at(row, column);
                boolean shown = later.shown(row, column).isPresent();
                assertTrue(!shown || change == 0 || Math.abs(change) >= rule.fewest(), () -> "seen to change by " + change);
                gaps += shown || column == columns ? 0 : change;
            }
            int together = later.shown(row, columns).isEmpty() ? 0 : Math.abs(gaps);
            assertTrue(together == 0 || together >= rule.fewest(), () -> "gaps seen to change by " + together);
        }
    }

    /** What is shown of both differs by none or by enough; every hidden change of a few people could have been as many amounts as the rule says. */
    private static void assertApart(WithheldTable earlier, WithheldTable later, SmallNumbers rule) {
        int rows = later.counts().rows();
        int columns = later.counts().columns();
        int[][] change = new int[rows + 1][columns + 1];
        int[][] most = new int[rows][columns];
        for (int row = 0; row <= rows; row++) {
            for (int column = 0; column <= columns; column++) {
                change[row][column] = later.counts().at(row, column) - earlier.counts().at(row, column);
                if (row < rows && column < columns) {
                    most[row][column] = change[row][column] + 10;
                }
                if (earlier.shown(row, column).isPresent() && later.shown(row, column).isPresent()) {
                    int seen = later.shown(row, column).getAsInt() - earlier.shown(row, column).getAsInt();
                    assertTrue(seen == 0 || seen >= rule.fewest(), () -> "seen to change by " + seen);
                }
                assertTrue(earlier.shown(row, column).isPresent() || later.shown(row, column).isEmpty(), "a gap was filled");
            }
        }
        Outsider outsider = new Outsider(later.withheld(), change, new int[rows][columns], most);
        for (int row = 0; row <= rows; row++) {
            for (int column = 0; column <= columns; column++) {
                int by = change[row][column];
                if (later.shown(row, column).isEmpty() && by > 0 && by < rule.fewest()) {
                    assertEquals(rule.fewest(), outsider.valuesOf(row, column, by, rule.fewest()), () -> Arrays.deepToString(change));
                }
            }
        }
    }

    private static int[][] random(Random random, int rows, int columns, int below) {
        int[][] cells = new int[rows][columns];
        for (int[] row : cells) {
            Arrays.setAll(row, column -> random.nextInt(below));
        }
        return cells;
    }

    private static int[][] copy(int[][] cells) {
        return Arrays.stream(cells).map(int[]::clone).toArray(int[][]::new);
    }
}
