package org.steadwork.caseload.statistics;

import java.util.Arrays;
import java.util.OptionalInt;

/**
 * A table fit to leave the clinic: small counts are withheld, and enough others that no withheld one can be got back from the totals to
 * within fewer values than the smallest count shown. It still knows the true counts, for the next report of a series: show only
 * {@link #shown}.
 *
 * <p>Withheld are counts from 1 to the smallest shown − 1, totals among them; every cell of a row with so small a total; everything
 * when the grand total is so small; and where columns tell a fact, rows whose people all stand in one column. Zeros are otherwise shown.
 * Not protected against: what readers know of their colleagues anyway; other tables about the same people; and a reader who runs this very
 * method on every possible table, who could work out some small counts from which others were withheld with them.
 */
public final class WithheldTable {

    private final CountTable counts;
    private final boolean[][] withheld;

    private WithheldTable(CountTable counts, boolean[][] withheld) {
        this.counts = counts;
        this.withheld = withheld;
    }

    /** Withholds what the rule asks for. For the first report on these people; later ones come from {@link ReportSeries}. */
    public static WithheldTable of(CountTable counts, SmallNumbers rule) {
        return of(counts, rule, new boolean[counts.rows() + 1][counts.columns() + 1]);
    }

    static WithheldTable of(CountTable counts, SmallNumbers rule, boolean[][] withheldBefore) {
        return new WithheldTable(counts, Withholding.of(counts, rule, withheldBefore));
    }

    /**
     * Takes up a table as it was published and kept.
     *
     * @param withheld true for each cell that was withheld, totals in the last row and column; another size throws {@link IllegalArgumentException}
     */
    public static WithheldTable kept(CountTable counts, boolean[][] withheld) {
        if (withheld.length != counts.rows() + 1 || Arrays.stream(withheld).anyMatch(row -> row.length != counts.columns() + 1)) {
            throw new IllegalArgumentException("What is withheld must be told for every cell and total of the table");
        }
        return new WithheldTable(counts, copy(withheld));
    }

    /** Returns the count to show, empty where it is withheld; row {@code counts().rows()} and column {@code counts().columns()} are the totals. */
    public OptionalInt shown(int row, int column) {
        return withheld[row][column] ? OptionalInt.empty() : OptionalInt.of(counts.at(row, column));
    }

    /** Returns true when every count is withheld. */
    public boolean showsNothing() {
        for (boolean[] row : withheld) {
            for (boolean cell : row) {
                if (!cell) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Returns the true counts, to be kept within the clinic. */
    public CountTable counts() {
        return counts;
    }

    /** Returns true for each cell withheld, totals in the last row and column. */
    public boolean[][] withheld() {
        return copy(withheld);
    }

    private static boolean[][] copy(boolean[][] cells) {
        return Arrays.stream(cells).map(boolean[]::clone).toArray(boolean[][]::new);
    }
}
