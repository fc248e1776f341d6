package org.steadwork.backup;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.Random;
import org.steadwork.storage.Migrations;

/** An H2 file with every migration and some invented rows in it, made by plain SQL. */
public final class SmallClinic {

    static final String OPTIONS = ";WRITE_DELAY=0;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";

    private SmallClinic() {
    }

    public static String url(Path folder, String name) {
        return "jdbc:h2:file:" + folder + "/" + name + OPTIONS;
    }

    /** Makes it, with patients and cases whose texts hold what texts may hold. */
    public static void make(String url, int patients) throws SQLException {
        Migrations migrations = Migrations.carried();
        migrations.migrate(url, "", "", migrations.last());
        try (Connection db = DriverManager.getConnection(url); Statement sql = db.createStatement()) {
            addLead(db);
            db.setAutoCommit(false);
            for (int id = 1; id <= patients; id++) {
                addPatient(db, id);
            }
            db.commit();
            sql.execute("alter sequence patient_seq restart with " + (patients + 50));
        }
    }

    static void addLead(Connection db) throws SQLException {
        try (Statement sql = db.createStatement()) {
            sql.execute("insert into account (id, version, user_name, full_name, display_name, role, active, created_at)"
                    + " values (1, 0, 'mara', 'Mara Invented', 'M. Invented', 'LEAD', true, timestamp with time zone '2030-03-04 05:06:07.123456+02:00')");
        }
    }

    public static void addPatient(Connection db, int id) throws SQLException {
        Random random = new Random(id);
        try (PreparedStatement patient = db.prepareStatement("insert into patient (id, version, file_number, given_name, family_name, search_name, birth_date, sex,"
                + " handedness, hours_a_week, registered_on) values (?, 0, ?, ?, ?, ?, ?, 'FEMALE', 'RIGHT', 37.5, ?)");
                PreparedStatement file = db.prepareStatement("insert into case_file (id, version, patient_id, clinician_id, complaint, history, opened_on) values (?, 0, ?, 1, ?, ?, ?)");
                PreparedStatement visit = db.prepareStatement("insert into visit (id, version, case_file_id, number, visited_on, kind, attendance) values (?, 0, ?, 1, ?, 'FIRST', 'ATTENDED')")) {
            patient.setInt(1, id);
            patient.setString(2, "SW-" + id);
            patient.setString(3, "Ottilie \uD83E\uDDD1 \u05E9\u05DC");
            patient.setString(4, "O'Quill; drop");
            patient.setString(5, "ottilie oquill " + id);
            patient.setObject(6, LocalDate.of(1980, 2, 29));
            patient.setObject(7, LocalDate.of(2030, 1, 1));
            patient.execute();
            file.setInt(1, id);
            file.setInt(2, id);
            file.setString(3, "Neck");
            file.setString(4, "line\n".repeat(random.nextInt(2000)));
            file.setObject(5, LocalDate.of(2030, 1, 1));
            file.execute();
            visit.setInt(1, id);
            visit.setInt(2, id);
            visit.setObject(3, LocalDate.of(2030, 1, 2));
            visit.execute();
        }
    }
}
