package org.steadwork.caseload;

import java.util.List;

/**
 * One table of the caseload, as it stands on the page and as it is taken away.
 *
 * @param key names it in addresses: lower case and underscores
 * @param rows on the page; {@code allRows} in the file
 */
record FigureTable(String key, String caption, List<Column> columns, List<Row> rows, List<Row> allRows) {

    /** A column; {@code number} sets it flush right. */
    record Column(String label, boolean number) {
        static Column words(String label) {
            return new Column(label, false);
        }

        static Column number(String label) {
            return new Column(label, true);
        }
    }

    /** A row by its name and its cells. */
    record Row(String name, List<Cell> cells) {
        Row(String name, Cell... cells) {
            this(name, List.of(cells));
        }

        public Row {
            cells = List.copyOf(cells);
        }
    }

    FigureTable(String key, String caption, List<Column> columns, List<Row> rows) {
        this(key, caption, columns, rows, rows);
    }

    FigureTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        allRows = List.copyOf(allRows);
        for (Row row : allRows) {
            if (row.cells().size() != columns.size() - 1) {
                throw new IllegalArgumentException("Row " + row.name() + " of " + key + " has " + row.cells().size() + " cells");
            }
        }
    }

    /** True when a cell of a row, counted from 0, stands under a column of numbers. */
    public boolean numbers(int cell) {
        return columns.get(cell + 1).number();
    }

    /** A table without a row, for a file of what cannot be counted. */
    static FigureTable nothing(String key) {
        return new FigureTable(key, "Nothing to count", List.of(Column.words("")), List.of());
    }
}
