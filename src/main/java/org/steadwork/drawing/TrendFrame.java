package org.steadwork.drawing;

import java.util.ArrayList;
import java.util.List;

/** Where the parts of a chart stand: the plot of its size, above it the rows of marks, below it the key of the marks. */
final class TrendFrame {

    /** Width of a mark with the gap to the next, and the height of a row of marks. */
    static final double MARK = 21;
    static final double MARK_GAP = 8;
    static final double KEY_LINE = 18;
    static final double KEY_INDENT = 28;
    private static final double KEY_GAP = 4;

    final Trend trend;
    final TrendSize size;
    final int rows;
    final List<List<String>> key;

    TrendFrame(Trend trend, TrendSize size) {
        this.trend = trend;
        this.size = size;
        int perRow = Math.max(1, (int) (plotWidth() / MARK));
        rows = (trend.marks().size() + perRow - 1) / perRow;
        key = size.small() ? List.of() : key();
    }

    private List<List<String>> key() {
        TrendWords words = new TrendWords(trend);
        List<List<String>> entries = new ArrayList<>();
        for (PlanMark mark : trend.marks()) {
            entries.add(TextWidth.wrap(words.mark(mark), 13, size.width - KEY_INDENT, false));
        }
        return entries;
    }

    double plotWidth() {
        return size.width - size.left - size.right;
    }

    double top() {
        return size.top + rows * MARK + (rows > 0 ? MARK_GAP : 0);
    }

    double height() {
        double lines = key.stream().mapToInt(List::size).sum() * KEY_LINE + key.size() * KEY_GAP;
        return plotHeight() + (key.isEmpty() ? 0 : 8 + lines);
    }

    /** Down to the dates under the axis. */
    double plotHeight() {
        return size.height - size.top + top();
    }

    /** The baseline of the first line of an entry of the key. */
    double keyLine(int entry) {
        double y = plotHeight() + 8 + 13;
        for (int i = 0; i < entry; i++) {
            y += key.get(i).size() * KEY_LINE + KEY_GAP;
        }
        return y;
    }
}
