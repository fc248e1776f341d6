package org.steadwork.people;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.storage.Migrations;

/** Patients registered before their names were kept by words are found afterwards: the migration splits as {@link NameWord} does. */
class WordsOfNamesTest {

    private static final String BEFORE = "2026.11.30.92";
    /** One word, many, one twice, one letter, other scripts, and as long as two fields of 80 can get. */
    private static final List<String> NAMES = List.of("Ottilie Quill", "Jean-Luc de la Tour", "Ana Maria Ana", "X Æ", "Ł Żółkiewska", "محمد علي",
            "李 小龙", "Straße", ("a".repeat(39) + " " + "b".repeat(39) + " ").repeat(2).strip(), "æ".repeat(80) + " " + "ß".repeat(79));

    @TempDir
    Path folder;

    @Test
    void onH2() throws Exception {
        check("jdbc:h2:file:" + folder.resolve("clinic") + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH", "", "");
    }

    @Test
    void onPostgresql() throws Exception {
        try (EmbeddedPostgres server = EmbeddedPostgres.builder().start()) {
            check(server.getJdbcUrl("postgres", "postgres"), "postgres", "postgres");
        }
    }

    private static void check(String url, String user, String password) throws SQLException {
        Migrations migrations = Migrations.carried();
        migrations.migrate(url, user, password, BEFORE);
        try (Connection db = DriverManager.getConnection(url, user, password)) {
            for (int i = 0; i < NAMES.size(); i++) {
                insert(db, i + 1, SearchKey.of(NAMES.get(i)));
            }
        }
        migrations.migrate(url, user, password, migrations.last());
        try (Connection db = DriverManager.getConnection(url, user, password)) {
            for (int i = 0; i < NAMES.size(); i++) {
                Set<String> expected = new TreeSet<>();
                NameWord.in(SearchKey.of(NAMES.get(i))).forEach(word -> expected.add(word.beginning() + " " + word.word()));
                assertEquals(expected, words(db, i + 1), NAMES.get(i));
            }
        }
    }

    private static void insert(Connection db, long id, String searchName) throws SQLException {
        try (PreparedStatement insert = db.prepareStatement("insert into patient (id, version, file_number, given_name, family_name, search_name, birth_date, sex, handedness,"
                + " registered_on) values (?, 0, ?, 'Somebody', 'Invented', ?, ?, 'FEMALE', 'RIGHT', ?)")) {
            insert.setLong(1, id);
            insert.setString(2, "SW-" + id);
            insert.setString(3, searchName);
            insert.setObject(4, LocalDate.of(1980, 2, 29));
            insert.setObject(5, LocalDate.of(2026, 1, 1));
            insert.executeUpdate();
        }
    }

    private static Set<String> words(Connection db, long id) throws SQLException {
        Set<String> words = new TreeSet<>();
        try (PreparedStatement select = db.prepareStatement("select beginning, word from patient_word where patient_id = ?")) {
            select.setLong(1, id);
            ResultSet rows = select.executeQuery();
            while (rows.next()) {
                words.add(rows.getString(1) + " " + rows.getString(2));
            }
        }
        return words;
    }
}
