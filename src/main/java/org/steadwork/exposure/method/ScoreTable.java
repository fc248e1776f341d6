package org.steadwork.exposure.method;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A published score table looked up by whole numbers. Which cells exist is given by the table itself: asking for another
 * cell is an error and never answered with a neighbour's value.
 */
public final class ScoreTable {

    private final String name;
    private final Map<List<Integer>, Integer> cells;

    private ScoreTable(String name, Map<List<Integer>, Integer> cells) {
        this.name = name;
        this.cells = cells;
    }

    /** Makes a table of rows, each the keys followed by the score; a cell given twice is refused. */
    public static ScoreTable of(String name, List<int[]> rows) {
        Map<List<Integer>, Integer> cells = new HashMap<>();
        for (int[] row : rows) {
            List<Integer> key = Arrays.stream(row, 0, row.length - 1).boxed().toList();
            if (cells.put(key, row[row.length - 1]) != null) {
                throw new IllegalArgumentException(name + " holds the cell " + key + " twice");
            }
        }
        return new ScoreTable(name, Map.copyOf(cells));
    }

    public int size() {
        return cells.size();
    }

    /** Returns the score of a cell; throws when the table has none for these keys. */
    public int at(int... keys) {
        List<Integer> key = Arrays.stream(keys).boxed().toList();
        Integer score = cells.get(key);
        if (score == null) {
            throw new IllegalArgumentException(name + " has no cell " + key);
        }
        return score;
    }
}
