package org.steadwork.backup;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfigBuilder;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.config.Config;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.kernel.RefusedStartException;
import org.steadwork.storage.Migrations;
import org.steadwork.storage.SchemaVersion;
import org.steadwork.tables.Sequences;

/** A clinic in a file moves into an empty PostgreSQL by one command, row by row the same, or not at all. */
@Tag("own-clinic")
class MoveToPostgresqlTest {

    private static final int PATIENTS = 700;
    private static EmbeddedPostgres server;
    private static int databases;

    @TempDir
    Path folder;

    private String file;
    private String there;

    @BeforeAll
    static void startTheServer() throws Exception {
        server = EmbeddedPostgres.start();
    }

    @AfterAll
    static void stopTheServer() throws Exception {
        server.close();
    }

    @BeforeEach
    void makeTheClinicAndAnEmptyDatabase() throws SQLException {
        file = SmallClinic.url(folder, "clinic");
        SmallClinic.make(file, PATIENTS);
        String name = "clinic" + ++databases;
        try (Connection db = DriverManager.getConnection(server.getJdbcUrl("postgres", "postgres")); Statement sql = db.createStatement()) {
            sql.execute("create database " + name);
        }
        there = server.getJdbcUrl("postgres", name);
    }

    @Test
    void everyRowIsThereAndTheFileIsAsItWas() throws Exception {
        Map<String, List<String>> before;
        Map<String, Long> numbers;
        try (Connection db = DriverManager.getConnection(file)) {
            before = RowByRow.of(db);
            numbers = Sequences.read(db);
        }
        byte[] bytes = Files.readAllBytes(folder.resolve("clinic.mv.db"));
        String said = move(Map.of());
        assertArrayEquals(bytes, Files.readAllBytes(folder.resolve("clinic.mv.db")), "the file is as it was");
        assertTrue(said.contains("holds the clinic now"), said);
        try (Connection db = open()) {
            Map<String, List<String>> moved = RowByRow.of(db);
            assertEquals(before.keySet(), moved.keySet());
            before.forEach((table, rows) -> assertEquals(rows, moved.get(table), table));
            assertEquals(PATIENTS, moved.get("patient").size());
            assertEquals(numbers, Sequences.read(db));
        }
        refused(Map.of(), "holds something already");
    }

    /** A clinic last used with an older program is moved as it is and then brought up to date. */
    @Test
    void anOlderClinicComesUpToDate() throws Exception {
        String old = SmallClinic.url(folder, "old");
        Migrations.carried().migrate(old, "", "", "2026.11.25.03");
        try (Connection db = DriverManager.getConnection(old)) {
            SmallClinic.addLead(db);
            SmallClinic.addPatient(db, 1);
        }
        move(Map.of("steadwork.file-url", old));
        try (Connection db = open()) {
            assertEquals(Migrations.carried().last(), SchemaVersion.of(db).orElseThrow());
            assertEquals(1, RowByRow.of(db).get("patient").size());
        }
    }

    @Test
    void aDatabaseThatHoldsAnythingIsLeftAlone() throws Exception {
        try (Connection db = open(); Statement sql = db.createStatement()) {
            sql.execute("create schema other");
            sql.execute("create table other.thing (a integer)");
            refused(Map.of(), "holds something already");
            sql.execute("select * from other.thing");
            assertTrue(RowByRow.of(db).isEmpty());
        }
    }

    /** A row that the database refuses: what was stored before it, and the schema, are gone again. */
    @Test
    void afterAFailureTheDatabaseIsAsEmptyAsBefore() throws Exception {
        try (Connection db = DriverManager.getConnection(file); Statement sql = db.createStatement()) {
            sql.execute("set referential_integrity false");
            sql.execute("update visit set case_file_id = 999999 where id = " + PATIENTS);
        }
        refused(Map.of(), "could not be moved");
        try (Connection db = open()) {
            assertEquals(List.of(), Contents.of(db).relations());
        }
        try (Connection db = DriverManager.getConnection(file); Statement sql = db.createStatement()) {
            sql.execute("update visit set case_file_id = 1, number = 2 where id = " + PATIENTS);
        }
        assertTrue(move(Map.of()).contains("holds the clinic now"), "mended, it is moved");
    }

    @Test
    void aClinicThatRunsOrIsNotThereIsSaid() throws Exception {
        refused(Map.of("steadwork.file-url", SmallClinic.url(folder, "nowhere")), "There is no clinic at");
        assertTrue(Files.notExists(folder.resolve("nowhere.mv.db")), "a file was made");
        try (Connection node = open(); Statement sql = node.createStatement()) {
            sql.execute("select pg_advisory_lock_shared(" + 0x737465616477_02L + ")");
            refused(Map.of(), "End every node first");
        }
    }

    private Connection open() throws SQLException {
        return DriverManager.getConnection(there, "postgres", "postgres");
    }

    private String move(Map<String, String> more) {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        assertEquals(0, MoveCommand.run(config(more), List.of(), new PrintStream(said, true, StandardCharsets.UTF_8)));
        return said.toString(StandardCharsets.UTF_8);
    }

    private void refused(Map<String, String> more, String words) {
        RefusedStartException refused = assertThrows(RefusedStartException.class, () -> move(more));
        assertTrue(refused.getMessage().contains(words), refused.getMessage());
    }

    private Config config(Map<String, String> more) {
        Map<String, String> all = new HashMap<>(Map.of("steadwork.database-kind", "postgresql", "quarkus.datasource.jdbc.url", there, "quarkus.datasource.username", "postgres",
                "quarkus.datasource.password", "postgres", "steadwork.data-folder", folder.toString(), "steadwork.file-url", file));
        all.putAll(more);
        return new SmallRyeConfigBuilder().withSources(new PropertiesConfigSource(all, "test", 100)).build();
    }
}
