package org.steadwork.caseload;

import java.util.List;

/**
 * What a group report says, in finished words: for the page, the file and the record. Nothing that was withheld is in it.
 *
 * @param people everyone counted; 0 when there are too few to say anything
 * @param places each place with its number of people
 * @param comment the clinic's word to the reader, may be null
 * @param signed when it was signed, in words; empty while it is a draft
 */
public record PrintedGroupReport(List<String> clinic, List<String> to, String about, String title, int people, List<Place> places, List<Table> tables,
        String comment, List<String> explained, List<String> signature, String foot, String signed) {

    /** The sign for a number that is withheld. */
    static final String WITHHELD = "–";

    public PrintedGroupReport {
        clinic = List.copyOf(clinic);
        to = List.copyOf(to);
        places = List.copyOf(places);
        tables = List.copyOf(tables);
        explained = List.copyOf(explained);
        signature = List.copyOf(signature);
    }

    public record Place(String name, String people) {
    }

    /** @param note what to know about this table; blank when nothing */
    public record Table(String title, String note, List<String> columns, List<Row> rows) {
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }
    }

    public record Row(String name, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    public List<String> commentLines() {
        return comment == null ? List.of() : comment.lines().filter(line -> !line.isBlank()).toList();
    }

    public boolean draft() {
        return signed.isEmpty();
    }

    public boolean tooFew() {
        return people == 0;
    }
}
