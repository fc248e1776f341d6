package org.steadwork.exchange.csv;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/** Comma-separated text with a header line, UTF-8. Source: RFC 4180; semicolons and tabs are taken as separators too, as spreadsheets write them. */
public final class CsvText {

    private static final char MARK = '\uFEFF';
    private static final CSVFormat WRITTEN = CSVFormat.RFC4180;

    private CsvText() {
    }

    /**
     * One row of a file.
     *
     * @param number line of the table, the header being row 1, as a spreadsheet counts
     * @param cells by the name of their column; what is missing at the end of a row is empty
     * @param surplus true when it has more cells than the header
     */
    record Row(int number, Map<String, String> cells, boolean surplus) {
    }

    /** A file that cannot be read as a table; the message says why, for people. */
    static final class NoTable extends RuntimeException {
        NoTable(String message) {
            super(message);
        }
    }

    /** Reads bytes as UTF-8, and refuses what is not, since a name that was guessed at would be stored wrong. */
    static String decode(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            if (text.indexOf('\0') >= 0) {
                throw new NoTable("The file is not a text. Save it as CSV, UTF-8.");
            }
            return text;
        } catch (CharacterCodingException e) {
            throw new NoTable("The file is not in UTF-8. Save it as \u201cCSV UTF-8\u201d and choose it again.");
        }
    }

    /**
     * Reads a table.
     *
     * @param known the names of the columns that may stand in it
     * @param required those that must
     */
    static List<Row> read(String text, Set<String> known, Set<String> required, int mostRows) {
        String body = !text.isEmpty() && text.charAt(0) == MARK ? text.substring(1) : text;
        if (body.isBlank()) {
            throw new NoTable("The file is empty.");
        }
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter(body)).setIgnoreEmptyLines(true).setIgnoreSurroundingSpaces(false).get();
        try (CSVParser parser = CSVParser.builder().setReader(new StringReader(body)).setFormat(format).get()) {
            List<Row> rows = new ArrayList<>();
            List<String> header = null;
            int number = 0;
            for (CSVRecord record : parser) {
                number++;
                if (header == null) {
                    header = header(record, known, required);
                } else if (!blank(record)) {
                    if (rows.size() == mostRows) {
                        throw new NoTable("The file has more than " + mostRows + " rows. Part it and take the parts in one after the other.");
                    }
                    rows.add(row(number, header, record));
                }
            }
            if (rows.isEmpty()) {
                throw new NoTable("The file has a header and no row.");
            }
            return rows;
        } catch (UncheckedIOException | IOException e) {
            throw new NoTable("The file is not a table that can be read: a quotation mark is open or out of place.");
        }
    }

    private static char delimiter(String body) {
        String first = body.lines().findFirst().orElse("");
        return first.indexOf(',') >= 0 ? ',' : first.indexOf(';') >= 0 ? ';' : first.indexOf('\t') >= 0 ? '\t' : ',';
    }

    private static List<String> header(CSVRecord record, Set<String> known, Set<String> required) {
        List<String> header = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String cell : record) {
            String name = cell.strip().toLowerCase(Locale.ROOT).replace(' ', '_');
            if (!known.contains(name)) {
                throw new NoTable("Row 1: \u201c" + (cell.length() > 40 ? cell.substring(0, 40) + "\u2026" : cell) + "\u201d is not a column of this kind of file. Columns are: "
                        + String.join(", ", known) + ".");
            }
            if (!seen.add(name)) {
                throw new NoTable("Row 1: the column \u201c" + name + "\u201d stands there twice.");
            }
            header.add(name);
        }
        List<String> missing = required.stream().filter(name -> !seen.contains(name)).toList();
        if (!missing.isEmpty()) {
            throw new NoTable("Row 1: " + (missing.size() == 1 ? "the column " : "the columns ") + String.join(", ", missing) + (missing.size() == 1 ? " is" : " are") + " missing.");
        }
        return header;
    }

    private static boolean blank(CSVRecord record) {
        return record.stream().allMatch(String::isBlank);
    }

    private static Row row(int number, List<String> header, CSVRecord record) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < header.size(); i++) {
            cells.put(header.get(i), i < record.size() ? FormulaGuard.plain(record.get(i)) : "");
        }
        return new Row(number, cells, record.size() > header.size());
    }

    /** @param mark puts the byte order mark first, by which some spreadsheets tell UTF-8 */
    public static byte[] write(List<String> header, Iterable<? extends List<?>> rows, boolean mark) {
        StringBuilder text = new StringBuilder();
        if (mark) {
            text.append(MARK);
        }
        try (CSVPrinter printer = new CSVPrinter(text, WRITTEN)) {
            printer.printRecord(header);
            for (List<?> row : rows) {
                for (Object cell : row) {
                    // a number is no formula, whatever its sign
                    printer.print(cell instanceof Number ? cell : FormulaGuard.guarded(cell == null ? null : cell.toString()));
                }
                printer.println();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
