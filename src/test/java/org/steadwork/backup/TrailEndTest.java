package org.steadwork.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.Config;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.account.trail.AuditChain;
import org.steadwork.account.trail.TrailEndFile;
import org.steadwork.account.trail.TrailEntry;
import org.steadwork.account.trail.TrailHead;

/** The end of the audit trail goes into a backup and comes back with it, so that what is missing is found after a restore as before. */
@Tag("own-clinic")
class TrailEndTest {

    private static final PrintStream NOWHERE = new PrintStream(OutputStream.nullOutputStream());

    @TempDir
    Path folder;

    private Path data;
    private Path backup;

    @BeforeEach
    void aClinicWithATrail() throws Exception {
        data = folder.resolve("data");
        backup = folder.resolve("clinic.backup");
        SmallClinic.make(url(data), 3);
        keep(data, trail(url(data), 5));
    }

    @Test
    void theEndComesBackWithItsTrail() throws Exception {
        assertEquals(0, BackupCommand.run(config(data), List.of(backup.toString()), NOWHERE));
        Path other = folder.resolve("other");
        assertEquals(0, RestoreCommand.run(config(other), List.of(backup.toString()), NOWHERE));
        assertEquals(end(data), end(other));
    }

    /** The file may lag behind what was sealed while the process died; the restored one does not. */
    @Test
    void aFileThatLaggedBehindIsMovedOn() throws Exception {
        TrailHead last = end(data);
        keep(data, new TrailHead(last.trail(), 3, hash(url(data), 3)));
        BackupCommand.run(config(data), List.of(backup.toString()), NOWHERE);
        RestoreCommand.run(config(folder.resolve("other")), List.of(backup.toString()), NOWHERE);
        assertEquals(last, end(folder.resolve("other")));
    }

    /** Somebody shortens the trail and its record in the database, makes a backup and restores it: the file still knows. */
    @Test
    void aTrailShortenedBeforeTheBackupIsStillMissedAfterTheRestore() throws Exception {
        TrailHead whole = end(data);
        shorten(url(data), 3);
        BackupCommand.run(config(data), List.of(backup.toString()), NOWHERE);
        Path other = folder.resolve("other");
        RestoreCommand.run(config(other), List.of(backup.toString()), NOWHERE);
        assertEquals(whole, end(other));
    }

    /** An older backup put in the place of a clinic that went on: its own end is kept, the later one stays beside it. */
    @Test
    void anOlderBackupBringsItsOwnEndAndTheLaterOneIsKept() throws Exception {
        TrailHead older = end(data);
        BackupCommand.run(config(data), List.of(backup.toString()), NOWHERE);
        keep(data, trail(url(data), 9));
        RestoreCommand.run(config(data), List.of(backup.toString(), "--move-old-aside"), NOWHERE);
        assertEquals(older, end(data));
        try (Stream<Path> files = Files.list(data)) {
            List<Path> aside = files.filter(file -> file.getFileName().toString().startsWith("clinic-audit-end-before-")).toList();
            assertEquals(1, aside.size());
            assertEquals(9, new TrailEndFile(aside.get(0)).read().orElseThrow().sealed());
        }
    }

    private static String url(Path data) {
        return SmallClinic.url(data, "clinic");
    }

    private static Path file(Path data) {
        return data.resolve("clinic-audit-end.txt");
    }

    private static TrailHead end(Path data) {
        return new TrailEndFile(file(data)).read().orElseThrow();
    }

    private static void keep(Path data, TrailHead end) throws IOException {
        new TrailEndFile(file(data)).write(end, Instant.EPOCH);
    }

    private static Config config(Path data) {
        return new SmallRyeConfigBuilder().withSources(new PropertiesConfigSource(Map.of("quarkus.datasource.jdbc.url", url(data), "steadwork.demo", "false",
                "steadwork.data-folder", data.toString(), "steadwork.database", "clinic", "steadwork.audit.anchor-file", file(data).toString(),
                BackupKey.SETTING, "a key that is only for this test"), "test", 100)).build();
    }

    /** Writes a sealed trail of so many entries anew, as the sealer does, and returns its end. */
    private static TrailHead trail(String url, int entries) throws SQLException {
        String hash = AuditChain.START;
        try (Connection db = DriverManager.getConnection(url);
                PreparedStatement event = db.prepareStatement("insert into audit_event (id, happened_at, actor, action) values (?, ?, 'M. Invented', 'viewed case')");
                PreparedStatement seal = db.prepareStatement("insert into audit_seal (sequence, event_id, previous_hash, hash) values (?, ?, ?, ?)")) {
            for (String table : List.of("audit_seal", "audit_event", "audit_head")) {
                db.createStatement().execute("delete from " + table);
            }
            for (int place = 1; place <= entries; place++) {
                Instant at = Instant.EPOCH.plusSeconds(place);
                event.setLong(1, place);
                event.setObject(2, OffsetDateTime.ofInstant(at, ZoneOffset.UTC));
                event.execute();
                String next = AuditChain.hash(hash, place, new TrailEntry(place, at, null, "M. Invented", "viewed case", null, null, null, null));
                seal.setLong(1, place);
                seal.setLong(2, place);
                seal.setString(3, hash);
                seal.setString(4, next);
                seal.execute();
                hash = next;
            }
            db.createStatement().execute("insert into audit_head (id, trail, sealed, hash) values (1, 'trail-of-this-test', " + entries + ", '" + hash + "')");
        }
        return new TrailHead("trail-of-this-test", entries, hash);
    }

    private static void shorten(String url, int to) throws SQLException {
        String hash = hash(url, to);
        try (Connection db = DriverManager.getConnection(url)) {
            for (String change : List.of("delete from audit_seal where sequence > " + to, "delete from audit_event where id > " + to,
                    "update audit_head set sealed = " + to + ", hash = '" + hash + "'")) {
                db.createStatement().execute(change);
            }
        }
    }

    private static String hash(String url, long place) throws SQLException {
        try (Connection db = DriverManager.getConnection(url); var row = db.createStatement().executeQuery("select hash from audit_seal where sequence = " + place)) {
            row.next();
            return row.getString(1);
        }
    }
}
