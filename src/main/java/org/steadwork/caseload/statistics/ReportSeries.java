package org.steadwork.caseload.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * Reports on one group as it grows, so that laying one beside another tells nothing of one person either. A new report is published only
 * when, against every earlier one,
 * <ol>
 * <li>each number shown is the same or differs by at least the smallest count shown, and so does what a line's total gives away of its
 * withheld cells together;</li>
 * <li>each withheld cell with a smaller change could have changed by at least as many different amounts as the smallest count shown, even
 * to a reader who knows which cells grew and which fell;</li>
 * <li>whatever was withheld once stays withheld, so that a later number says nothing of an earlier gap.</li>
 * </ol>
 * Otherwise the last report stands. A first report that showed no number at all is forgotten. The method is ours (PROP). One series must
 * hold all reports about the same people, with the same rows and columns; since gaps stay, begin a new one with other people, as those
 * first seen in a new calendar year. Reports on few people close together fill a series with gaps: of 2 × 3 places with 20 new people a
 * month, 84 % of the numbers were withheld after a year of monthly reports, 39 % after quarterly, 7 % after half-yearly ones (200 random
 * years each). Immutable.
 */
public final class ReportSeries {

    private final SmallNumbers rule;
    private final List<WithheldTable> published;

    /** Takes up a series: the reports published so far in order of time, at least one, all of one size; else {@link IllegalArgumentException}. */
    public ReportSeries(SmallNumbers rule, List<WithheldTable> published) {
        if (published.isEmpty()) {
            throw new IllegalArgumentException("A series needs its first report");
        }
        this.rule = rule;
        this.published = List.copyOf(published);
        published.forEach(report -> requireSameSize(report.counts()));
    }

    /** Begins a series. */
    public static ReportSeries startingWith(CountTable counts, SmallNumbers rule) {
        return new ReportSeries(rule, List.of(WithheldTable.of(counts, rule)));
    }

    /** Returns the report that stands. */
    public WithheldTable latest() {
        return published.get(published.size() - 1);
    }

    /** Returns all reports published, in order. */
    public List<WithheldTable> published() {
        return published;
    }

    /** Returns the series with a new report, or this one unchanged when the new counts are still too near to earlier ones. */
    public ReportSeries offer(CountTable counts) {
        requireSameSize(counts);
        if (latest().showsNothing()) {
            return startingWith(counts, rule);
        }
        WithheldTable next = WithheldTable.of(counts, rule, latest().withheld());
        if (!published.stream().allMatch(earlier -> isApart(earlier, next))) {
            return this;
        }
        List<WithheldTable> longer = new ArrayList<>(published);
        longer.add(next);
        return new ReportSeries(rule, longer);
    }

    private boolean isApart(WithheldTable earlier, WithheldTable next) {
        int rows = next.counts().rows() + 1;
        int columns = next.counts().columns() + 1;
        boolean[][] hidden = next.withheld();
        int[][] change = new int[rows][columns];
        HiddenRanges ranges = new HiddenRanges(rows, columns);
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                change[row][column] = next.counts().at(row, column) - earlier.counts().at(row, column);
                if (hidden[row][column]) {
                    int by = change[row][column];
                    ranges.hide(row, column, by < 0 ? -by : HiddenRanges.FREELY, by < 0 ? HiddenRanges.FREELY : by);
                } else if (rule.isSmall(change[row][column])) {
                    return false;
                }
            }
        }
        return linesGiveNothingAway(change, hidden) && cellsGiveNothingAway(change, hidden, ranges);
    }

    private boolean linesGiveNothingAway(int[][] change, boolean[][] hidden) {
        int lastRow = change.length - 1;
        int lastColumn = change[0].length - 1;
        for (int row = 0; row <= lastRow; row++) {
            int together = 0;
            for (int column = 0; column < lastColumn; column++) {
                together += hidden[row][column] ? change[row][column] : 0;
            }
            if (!hidden[row][lastColumn] && rule.isSmall(together)) {
                return false;
            }
        }
        for (int column = 0; column <= lastColumn; column++) {
            int together = 0;
            for (int row = 0; row < lastRow; row++) {
                together += hidden[row][column] ? change[row][column] : 0;
            }
            if (!hidden[lastRow][column] && rule.isSmall(together)) {
                return false;
            }
        }
        return true;
    }

    private boolean cellsGiveNothingAway(int[][] change, boolean[][] hidden, HiddenRanges ranges) {
        for (int row = 0; row < change.length; row++) {
            for (int column = 0; column < change[row].length; column++) {
                if (hidden[row][column] && rule.isSmall(change[row][column]) && !ranges.canTake(row, column, rule.fewest())) {
                    return false;
                }
            }
        }
        return true;
    }

    private void requireSameSize(CountTable counts) {
        CountTable first = published.get(0).counts();
        if (counts.rows() != first.rows() || counts.columns() != first.columns()) {
            throw new IllegalArgumentException("A series has " + first.rows() + " rows and " + first.columns() + " columns, but a report has "
                    + counts.rows() + " and " + counts.columns());
        }
    }
}
