package org.steadwork.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfigBuilder;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.microprofile.config.Config;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.storage.Migrations;
import org.steadwork.storage.SchemaVersion;
import org.steadwork.tables.Sequences;
import org.steadwork.tables.Snapshot;

/** A backup made while others write, restored, is row by row what its moment saw, on H2 and on PostgreSQL; one that is not whole is refused. */
@Tag("own-clinic")
class BackupRoundTripTest {

    private static final BackupKey KEY = BackupKey.of("a key that is only for this test");
    private static final int PATIENTS = 300;

    @TempDir
    Path folder;

    private String url;

    @BeforeEach
    void makeTheClinic() throws SQLException {
        url = SmallClinic.url(folder, "clinic");
        SmallClinic.make(url, PATIENTS);
    }

    @Test
    void whatWritersDoMeanwhileIsNotInIt() throws Exception {
        AtomicBoolean go = new AtomicBoolean(true);
        AtomicInteger written = new AtomicInteger(PATIENTS);
        Thread writer = new Thread(() -> write(go, written));
        Path file = folder.resolve("during.backup");
        Map<String, List<String>> seen;
        try (Connection keepsOpen = DriverManager.getConnection(url); Connection db = DriverManager.getConnection(url)) {
            writer.start();
            while (written.get() < PATIENTS + 20) {
                Thread.onSpinWait();
            }
            try (Snapshot snapshot = Snapshot.take(db)) {
                int before = written.get();
                SafeFile.write(snapshot, Optional.empty(), KEY, Instant.EPOCH, file);
                assertTrue(written.get() > before + 5, "others wrote while it was made: " + (written.get() - before));
                seen = RowByRow.of(db);
            }
            go.set(false);
            writer.join();
            assertTrue(RowByRow.of(keepsOpen).get("patient").size() > seen.get("patient").size());
        }
        String restored = SmallClinic.url(folder, "restored");
        restore(restored, "", "", file);
        try (Connection db = DriverManager.getConnection(restored)) {
            assertSame(seen, RowByRow.of(db));
        }
    }

    /** Adds patients, changes long texts and removes rows, each in one transaction with its case and visit. */
    private void write(AtomicBoolean go, AtomicInteger written) {
        try (Connection db = DriverManager.getConnection(url)) {
            db.setAutoCommit(false);
            while (go.get()) {
                int id = written.get() + 1;
                SmallClinic.addPatient(db, id);
                db.createStatement().execute("update case_file set history = history || '" + "x".repeat(3000) + "' where id = " + (1 + id % PATIENTS));
                if (id % 3 == 0) {
                    db.createStatement().execute("delete from visit where id = " + id / 3);
                }
                db.commit();
                written.incrementAndGet();
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void aClinicMovesToPostgresqlAndBack() throws Exception {
        Path file = backup(url, "", "", "h2.backup");
        try (EmbeddedPostgres server = EmbeddedPostgres.start(); Connection here = DriverManager.getConnection(url)) {
            String there = server.getJdbcUrl("postgres", "postgres");
            restore(there, "postgres", "postgres", file);
            try (Connection db = DriverManager.getConnection(there, "postgres", "postgres")) {
                assertSame(RowByRow.of(here), RowByRow.of(db));
                assertEquals(Sequences.read(here), Sequences.read(db));
            }
            Path back = backup(there, "postgres", "postgres", "postgresql.backup");
            String again = SmallClinic.url(folder, "again");
            restore(again, "", "", back);
            try (Connection db = DriverManager.getConnection(again)) {
                assertSame(RowByRow.of(here), RowByRow.of(db));
            }
        }
    }

    /** The backup of an older program comes into its own schema first and is then brought to today's. */
    @Test
    void anOlderBackupIsBroughtUpToDateAndANewerOneRefused() throws Exception {
        String old = SmallClinic.url(folder, "old");
        Migrations.carried().migrate(old, "", "", "2026.11.25.03");
        try (Connection db = DriverManager.getConnection(old)) {
            SmallClinic.addLead(db);
            SmallClinic.addPatient(db, 1);
        }
        Path file = backup(old, "", "", "old.backup");
        Path data = folder.resolve("data");
        assertEquals(0, RestoreCommand.run(config(data), List.of(file.toString()), new PrintStream(OutputStream.nullOutputStream())));
        try (Connection there = DriverManager.getConnection(SmallClinic.url(data, "clinic")); Connection here = DriverManager.getConnection(old)) {
            assertEquals(RowByRow.of(here).get("patient"), RowByRow.of(there).get("patient"));
            assertEquals(Migrations.carried().last(), SchemaVersion.of(there).orElseThrow());
        }
        try (Connection db = DriverManager.getConnection(old)) {
            db.createStatement().execute("update flyway_schema_history set \"version\" = '2099.01.01.01' where \"version\" = '2026.11.25.03'");
        }
        Path newer = backup(old, "", "", "newer.backup");
        assertRefused("newer Steadwork", () -> RestoreCommand.run(config(folder.resolve("elsewhere")), List.of(newer.toString()), System.out));
        assertFalse(Files.exists(folder.resolve("elsewhere")), "something was touched");
    }

    private static Config config(Path data) {
        return new SmallRyeConfigBuilder().withSources(new PropertiesConfigSource(Map.of("quarkus.datasource.jdbc.url", SmallClinic.url(data, "clinic"), "steadwork.demo", "false",
                "steadwork.data-folder", data.toString(), "steadwork.database", "clinic", BackupKey.SETTING, "a key that is only for this test"), "test", 100)).build();
    }

    @Test
    void nothingGoesIntoADatabaseThatHoldsSomething() throws Exception {
        Path file = backup(url, "", "", "full.backup");
        try (Connection db = DriverManager.getConnection(url)) {
            Map<String, List<String>> before = RowByRow.of(db);
            BackupFile backup = new BackupFile(file, KEY);
            BackupFile.Read checked = backup.check();
            assertRefused("empty one only", () -> Restoring.into(db, backup, checked));
            assertSame(before, RowByRow.of(db));
        }
    }

    /** The file changes between being checked and being read: nothing of it stays. */
    @Test
    void allOrNothingIsStored() throws Exception {
        Path file = backup(url, "", "", "changing.backup");
        BackupFile backup = new BackupFile(file, KEY);
        BackupFile.Read checked = backup.check();
        byte[] bytes = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(bytes, bytes.length - 40));
        String fresh = SmallClinic.url(folder, "fresh");
        Migrations.carried().migrate(fresh, "", "", checked.head().schema());
        try (Connection db = DriverManager.getConnection(fresh)) {
            Map<String, List<String>> asMigrated = RowByRow.of(db);
            assertRefused("damaged or cut off", () -> Restoring.into(db, backup, checked));
            assertSame(asMigrated, RowByRow.of(db));
        }
    }

    @Test
    void aFileThatIsNotWholeOrNotOursIsRefusedInWords() throws Exception {
        Path file = backup(url, "", "", "whole.backup");
        byte[] whole = Files.readAllBytes(file);
        new BackupFile(file, KEY).check();
        Random random = new Random(20301204);
        for (int round = 0; round < 20; round++) {
            byte[] changed = whole.clone();
            changed[Seal.HEAD_BYTES + random.nextInt(whole.length - Seal.HEAD_BYTES)] ^= (byte) (1 << random.nextInt(8));
            refused("damaged or cut off", changed);
        }
        for (int length : List.of(0, 5, Seal.HEAD_BYTES - 1)) {
            refused("no backup of Steadwork", Arrays.copyOf(whole, length));
        }
        for (int length : List.of(Seal.HEAD_BYTES, Seal.HEAD_BYTES + 7, whole.length / 2, whole.length - 1, Seal.HEAD_BYTES + Seal.CHUNK + Seal.TAG)) {
            refused("damaged or cut off", Arrays.copyOf(whole, Math.min(length, whole.length - 1)));
        }
        byte[] longer = Arrays.copyOf(whole, whole.length + 10);
        refused("damaged or cut off", longer);
        byte[] foreign = "PK\u0003\u0004 a ZIP file of something else, long enough to hold what a head would be, and more".getBytes();
        refused("no backup of Steadwork", foreign);
        Files.write(file, whole);
        assertRefused("sealed with another", () -> new BackupFile(file, BackupKey.of("another key, long enough")).check());
        assertRefused("no file", () -> new BackupFile(folder.resolve("nowhere.backup"), KEY).check());
    }

    private void refused(String words, byte[] bytes) throws IOException {
        Path file = folder.resolve("broken.backup");
        Files.write(file, bytes);
        assertRefused(words, () -> new BackupFile(file, KEY).check());
    }

    @Test
    void chunksCannotChangePlacesOrStandForTheEnd() throws Exception {
        ByteArrayOutputStream sealed = new ByteArrayOutputStream();
        byte[] plain = new byte[3 * Seal.CHUNK + 100];
        new Random(7).nextBytes(plain);
        try (SealedOutput out = new SealedOutput(sealed, Seal.fresh(KEY))) {
            out.write(plain);
        }
        byte[] bytes = sealed.toByteArray();
        assertTrue(Arrays.equals(plain, open(bytes)), "it opens as it was");
        int chunk = Seal.CHUNK + Seal.TAG;
        byte[] swapped = bytes.clone();
        System.arraycopy(bytes, Seal.HEAD_BYTES, swapped, Seal.HEAD_BYTES + chunk, chunk);
        System.arraycopy(bytes, Seal.HEAD_BYTES + chunk, swapped, Seal.HEAD_BYTES, chunk);
        assertRefused("damaged", () -> open(swapped));
        assertRefused("damaged", () -> open(Arrays.copyOf(bytes, Seal.HEAD_BYTES + 2 * chunk)));
        assertFalse(Arrays.equals(sealed(plain), sealed(plain)), "the same twice is sealed differently");
    }

    private static byte[] sealed(byte[] plain) throws IOException {
        ByteArrayOutputStream sealed = new ByteArrayOutputStream();
        try (SealedOutput out = new SealedOutput(sealed, Seal.fresh(KEY))) {
            out.write(plain);
        }
        return sealed.toByteArray();
    }

    private static byte[] open(byte[] sealed) throws IOException {
        try (SealedInput in = new SealedInput(new java.io.ByteArrayInputStream(sealed), KEY)) {
            return in.readAllBytes();
        }
    }

    private Path backup(String from, String user, String password, String name) throws Exception {
        Path file = folder.resolve(name);
        try (Connection db = DriverManager.getConnection(from, user, password); Snapshot snapshot = Snapshot.take(db)) {
            SafeFile.write(snapshot, Optional.empty(), KEY, Instant.EPOCH, file);
        }
        return file;
    }

    private static void restore(String into, String user, String password, Path file) throws Exception {
        BackupFile backup = new BackupFile(file, KEY);
        BackupFile.Read checked = backup.check();
        Migrations.carried().migrate(into, user, password, checked.head().schema());
        try (Connection db = DriverManager.getConnection(into, user, password)) {
            Restoring.into(db, backup, checked);
        }
    }

    private static void assertSame(Map<String, List<String>> expected, Map<String, List<String>> found) {
        assertEquals(expected.keySet(), found.keySet());
        expected.forEach((table, rows) -> assertEquals(rows, found.get(table), table));
    }

    interface Act {
        void run() throws Exception;
    }

    static void assertRefused(String words, Act act) {
        RefusedBackupException refused = assertThrows(RefusedBackupException.class, act::run);
        assertTrue(refused.getMessage().contains(words), refused.getMessage());
    }
}
