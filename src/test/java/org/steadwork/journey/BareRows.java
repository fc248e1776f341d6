package org.steadwork.journey;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;

/** The floor of a page: plain SQL for the rows it shows, every value read and nothing made of them. */
final class BareRows {

    private static final List<String> NAMES = List.of("aldercombe", "brackdale", "coldfield", "dungate", "elmholm", "fenlock", "gorsemere", "hazelridge", "ivesstead", "kestrelthwaite",
            "larchwick", "marlbrook");
    private static final String CASE = "select * from case_file c join patient p on p.id = c.patient_id where c.id = ?";
    private static final String SYMPTOMS = "select * from symptom_report r left join region_symptom s on s.symptom_report_id = r.id where r.case_file_id = ?";
    private static final List<String> MAP = List.of(CASE, SYMPTOMS, "select * from workplace_assessment where case_file_id = ?", "select * from workplace_finding where case_file_id = ?",
            "select * from case_link where case_file_id = ?", "select * from score where case_file_id = ? order by scored_on", "select * from exercise_prescription where case_file_id = ?",
            "select * from red_flag_screen where case_file_id = ?", "select * from visit where case_file_id = ? order by number", "select * from work_status where case_file_id = ?");
    private static final List<String> OUTCOMES = List.of(CASE, SYMPTOMS, "select * from score where case_file_id = ? order by scored_on", "select * from visit where case_file_id = ? order by number",
            "select * from own_activity where case_file_id = ?", "select * from work_status where case_file_id = ?", "select * from red_flag_screen where case_file_id = ?");

    private final Connection db;
    private final LocalDate today;
    private final long[] ids;

    BareRows(Connection db, LocalDate today, long[] ids) {
        this.db = db;
        this.today = today;
        this.ids = ids;
    }

    /** What somebody has typed of a name so far: three letters and more. */
    static String typed(int number) {
        String name = NAMES.get(number % NAMES.size());
        return name.substring(0, Math.min(name.length(), 3 + number % 5));
    }

    void map(int number) throws SQLException {
        for (String sql : MAP) {
            read(sql, ids[number % ids.length]);
        }
    }

    void outcomes(int number) throws SQLException {
        for (String sql : OUTCOMES) {
            read(sql, ids[number % ids.length]);
        }
    }

    void today() throws SQLException {
        read("select * from worklist_entry e join case_file c on c.id = e.case_file_id join patient p on p.id = c.patient_id where e.cleared_on is null"
                + " order by e.place, e.since_on, e.id fetch first 50 rows only");
        read("select rule, count(*) from worklist_entry where cleared_on is null group by rule");
    }

    /** The first patients with a word that begins as was typed. */
    void typeAhead(int number) throws SQLException {
        String typed = typed(number);
        read("select * from patient where id in (select patient_id from patient_word where beginning = '" + typed.substring(0, 2) + "' and word like '" + typed
                + "%' order by beginning, word, patient_id fetch first 60 rows only)");
    }

    void caseload(LocalDate from) throws SQLException {
        read("select * from case_outcome where opened_on >= '" + from + "' and opened_on <= '" + today + "'");
    }

    /** One changed row with its history and its line in the audit trail, forced to the disk. */
    void saveVisit(int number) throws SQLException {
        long id = ids[number % ids.length];
        db.setAutoCommit(false);
        read("select * from visit where case_file_id = ? and number = 1", id);
        try (PreparedStatement update = db.prepareStatement("update visit set version = version + 1 where case_file_id = ? and number = 1")) {
            update.setLong(1, id);
            update.executeUpdate();
        }
        try (PreparedStatement insert = db.prepareStatement("insert into revision (id, made_at, author) select coalesce(max(id), 0) + 1, 1, 'bench' from revision")) {
            insert.executeUpdate();
        }
        db.commit();
        db.setAutoCommit(true);
    }

    private void read(String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = db.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            try (ResultSet row = statement.executeQuery()) {
                int columns = row.getMetaData().getColumnCount();
                while (row.next()) {
                    for (int i = 1; i <= columns; i++) {
                        row.getObject(i);
                    }
                }
            }
        }
    }
}
