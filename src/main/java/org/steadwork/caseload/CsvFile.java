package org.steadwork.caseload;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A table as a CSV file (RFC 4180, UTF-8), with what was chosen above it. No cell can begin a formula in a spreadsheet. */
final class CsvFile {

    private static final String BEGINS_A_FORMULA = "=+-@\t\r\n";

    private CsvFile() {
    }

    /** @param chosen what the table is of, in words: its first line */
    static String of(FigureTable table, String chosen) {
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
            printer.printRecord(harmless(table.caption()), harmless(chosen));
            printer.printRecord(table.columns().stream().map(column -> harmless(column.label())).toList());
            for (FigureTable.Row row : table.allRows()) {
                List<String> cells = new ArrayList<>(List.of(harmless(row.name())));
                row.cells().forEach(cell -> cells.add(harmless(cell.plain())));
                printer.printRecord(cells);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    /** Puts an apostrophe before what a spreadsheet would take for a formula; a plain negative number is none. */
    static String harmless(String text) {
        boolean formula = !text.isEmpty() && BEGINS_A_FORMULA.indexOf(text.charAt(0)) >= 0 && !text.matches("-\\d+(\\.\\d+)?( to -?(\\d+(\\.\\d+)?|Inf))?|-Inf");
        return formula ? "'" + text : text;
    }
}
