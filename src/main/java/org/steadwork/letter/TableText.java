package org.steadwork.letter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** A table kept as text: one row a line, cells parted by tabs. */
final class TableText {

    private TableText() {
    }

    /** Returns the rows that hold anything, each padded or cut to the number of columns. */
    static List<List<String>> rows(String text, int columns) {
        List<List<String>> rows = new ArrayList<>();
        for (String line : text.split("\n")) {
            if (!line.isBlank()) {
                String[] cells = Arrays.copyOf(line.split("\t", -1), columns);
                rows.add(Arrays.stream(cells).map(cell -> cell == null ? "" : cell.strip()).toList());
            }
        }
        return rows;
    }

    /** Joins cells, given row after row, to a text; rows of blanks fall away, a last row that is short stays. */
    static String of(List<String> cells, int columns) {
        List<String> lines = new ArrayList<>();
        for (int from = 0; from < cells.size(); from += columns) {
            List<String> row = cells.subList(from, Math.min(from + columns, cells.size())).stream().map(cell -> cell.replaceAll("[\\t\\r\\n]+", " ").strip()).toList();
            if (!row.stream().allMatch(String::isEmpty)) {
                lines.add(row.stream().collect(Collectors.joining("\t")));
            }
        }
        return String.join("\n", lines);
    }
}
