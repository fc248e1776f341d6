package org.steadwork.storage;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.Set;
import java.util.function.Function;

/** Reads the database of a killed process: is every acknowledged write there, and nothing by half? */
final class KillCheck {

    /** What must be empty: rows of one transaction of which a part is missing. Only what the writers make is looked at. */
    private static final List<String> HALVES = List.of(
            "select 'patient without words to be found by', p.id from patient p where p.family_name like 'Kill%' and not exists (select 1 from patient_word w where w.patient_id = p.id)",
            "select 'patient without history', p.id from patient p where p.family_name like 'Kill%' and not exists (select 1 from patient_history h where h.id = p.id)",
            "select 'patient not in the audit trail', p.id from patient p where p.family_name like 'Kill%' and not exists"
                    + " (select 1 from audit_event e where e.patient_id = p.id and e.action = 'registered patient')",
            "select 'audit entry without its patient', e.patient_id from audit_event e where e.action = 'registered patient' and not exists"
                    + " (select 1 from patient p where p.id = e.patient_id)",
            "select 'case without its first visit', c.id from case_file c where not exists (select 1 from visit v where v.case_file_id = c.id and v.number = 1)",
            "select 'case without history', c.id from case_file c where not exists (select 1 from case_file_history h where h.id = c.id)",
            "select 'case not in the audit trail', c.id from case_file c where c.complaint like 'Neck of Kill%' and not exists"
                    + " (select 1 from audit_event e where e.case_file_id = c.id and e.action = 'opened case')",
            "select 'audit entry without its case', e.case_file_id from audit_event e where e.action = 'opened case' and not exists"
                    + " (select 1 from case_file c where c.id = e.case_file_id)",
            "select 'history without its revision', h.revision from case_file_history h where not exists (select 1 from revision r where r.id = h.revision)",
            "select 'report whose last state is not in its history', s.id from symptom_report s where s.own_words like 'round %' and not exists"
                    + " (select 1 from symptom_report_history h where h.id = s.id and h.own_words = s.own_words)",
            "select 'report with more states than saves', h.id from symptom_report_history h where h.own_words like 'round %' group by h.id"
                    + " having count(*) <> (select count(*) from audit_event e where e.action = 'changed symptoms' and e.case_file_id = 1)");

    private final Connection db;

    KillCheck(Connection db) {
        this.db = db;
    }

    List<String> of(WriterBook book) throws SQLException {
        List<String> wrong = new ArrayList<>();
        for (String half : HALVES) {
            read(half, row -> text(row, 1) + " " + text(row, 2), wrong);
        }
        missing(book, "patient", "select id, family_name from patient where family_name like 'Kill%'", wrong);
        missing(book, "case", "select id, complaint from case_file", wrong);
        missing(book, "symptoms", "select id, own_words from symptom_report_history where own_words like 'round %'", wrong);
        missing(book, "letter", "select case_file_id, cast(texts as varchar) from letter_history", wrong);
        return wrong;
    }

    private void missing(WriterBook book, String kind, String stored, List<String> wrong) throws SQLException {
        List<String> found = new ArrayList<>();
        read(stored, row -> text(row, 1) + " " + text(row, 2), found);
        boolean letter = kind.equals("letter");
        String all = letter ? String.join("\n", found) : "";
        Set<String> exact = new TreeSet<>(found);
        for (WriterBook.Line line : book.lines(kind)) {
            boolean there = letter ? all.contains(line.words() + "\"") || all.contains(line.words() + "\n") : exact.contains(line.where() + " " + line.words());
            if (!there) {
                wrong.add("acknowledged and not there: " + line);
            }
        }
    }

    private void read(String sql, Function<ResultSet, String> line, List<String> into) throws SQLException {
        try (Statement statement = db.createStatement(); ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                into.add(line.apply(rows));
            }
        }
    }

    private static String text(ResultSet row, int place) {
        try {
            return row.getString(place);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
