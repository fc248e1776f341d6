package org.steadwork.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.backup.RowByRow;
import org.steadwork.journey.Guest;
import org.steadwork.journey.PackagedApplication;
import org.steadwork.journey.PackagedCommand;

/** The packaged jar in trouble: each is said in one line without the inside of the program, nothing starts by half, nothing is lost. */
@Tag("long")
class StartTroubleIT {

    private static final Pattern FIRST_RUN = Pattern.compile("/first-run\\?key=[\\w-]+");
    private static final String PASSWORD = "a long password for a test";

    @TempDir
    Path folder;

    private Path data;
    private Map<String, String> settings;

    @BeforeEach
    void place() {
        data = folder.resolve("data");
        settings = new HashMap<>(Map.of("steadwork.data-folder", data.toString(), "quarkus.http.port", "0"));
    }

    @Test
    void keysAreMadeSetChangedAndTakenOffAndEveryWrongOneIsSaidAndCompactingKeepsRowsAndSeal() throws Exception {
        beginClinic(Map.of());
        Map<String, List<String>> before = rows("", "");
        Path key = folder.resolve("database.key");
        Path second = folder.resolve("second.key");
        for (Path one : List.of(key, second)) {
            assertEquals(0, PackagedCommand.run(Map.of(), "make-key", one.toString()).exit());
        }
        PackagedCommand.run(Map.of(), "make-key", key.toString()).assertRefused("never written over another");
        refused(Map.of("steadwork.database.key-file", key.toString()), "is not sealed");
        refused(Map.of("steadwork.database.key", "short"), "too short");
        refused(Map.of("steadwork.database.key-file", folder.resolve("none").toString()), "cannot be read");
        command(Map.of(), "change-database-key").assertRefused("needs the new key");
        assertDone(command(Map.of("steadwork.database.new-key-file", key.toString()), "change-database-key"));
        refused(Map.of(), "no key was given");
        refused(Map.of("steadwork.database.key-file", second.toString()), "not the one the file was sealed with");
        assertFalse(Files.readString(data.resolve("clinic.mv.db"), StandardCharsets.ISO_8859_1).contains("Otterbourne"), "a name in the sealed file");
        assertDone(command(Map.of("steadwork.database.key-file", key.toString(), "steadwork.database.new-key-file", second.toString()), "change-database-key"));
        refused(Map.of("steadwork.database.key-file", key.toString()), "not the one the file was sealed with");
        command(Map.of(), "compact").assertRefused("no key was given");
        assertDone(command(Map.of("steadwork.database.key-file", second.toString()), "compact"));
        refused(Map.of(), "no key was given");
        assertFalse(Files.readString(data.resolve("clinic.mv.db"), StandardCharsets.ISO_8859_1).contains("Otterbourne"), "a name in the compacted file");
        try (PackagedApplication clinic = PackagedApplication.startKeeping(folder, Map.of("steadwork.database.key-file", second.toString()))) {
            assertFalse(clinic.log().contains(Files.readString(second).strip()), "the key in the log");
            assertTrue(signedIn(clinic).open("/patients?q=Otterbourne").expect(200).words().contains("Otterbourne"));
        }
        assertDone(command(Map.of("steadwork.database.key-file", second.toString()), "change-database-key", "none"));
        assertDone(command(Map.of(), "compact"));
        Map<String, List<String>> after = rows("", "");
        for (String table : List.of("patient", "account", "patient_word", "patient_history")) {
            assertEquals(before.get(table), after.get(table), table);
        }
        assertFalse(Files.exists(data.resolve("changing-key")), "a copy was left behind");
    }

    @Test
    void backedUpAndRestoredByCommands() throws Exception {
        beginClinic(Map.of());
        Map<String, List<String>> before = rows("", "");
        Map<String, String> key = Map.of("steadwork.backup.key", "a backup key for this test");
        Path file = folder.resolve("clinic.backup");
        command(Map.of(), "backup", file.toString()).assertRefused("No backup key is set");
        assertDone(command(key, "backup", file.toString()));
        command(key, "backup", file.toString()).assertRefused("never written over another");
        command(key, "restore", file.toString()).assertRefused("There is a clinic");
        command(Map.of("steadwork.backup.key", "another key, just as long"), "restore", file.toString(), "--move-old-aside").assertRefused("does not open this backup");
        Path cut = folder.resolve("cut.backup");
        byte[] whole = Files.readAllBytes(file);
        Files.write(cut, Arrays.copyOf(whole, whole.length - 100));
        command(key, "restore", cut.toString(), "--move-old-aside").assertRefused("damaged or cut off");
        assertEquals(before, rows("", ""), "a refused file changed something");
        PackagedCommand.run(Map.of("steadwork.data-folder", folder.resolve("demo").toString(), "steadwork.backup.key", "a backup key for this test"),
                "demo", "restore", file.toString()).assertRefused("never restored into the demo");
        assertDone(command(key, "restore", file.toString(), "--move-old-aside"));
        assertEquals(before, rows("", ""));
        try (Stream<Path> kept = Files.list(data)) {
            assertEquals(1, kept.filter(one -> one.getFileName().toString().startsWith("clinic-before-")).count());
        }
        Map<String, String> elsewhere = Map.of("steadwork.data-folder", folder.resolve("other/data").toString(), "steadwork.backup.key", "a backup key for this test");
        assertDone(PackagedCommand.run(elsewhere, "restore", file.toString()));
        assertEquals(0, PackagedCommand.run(elsewhere, "check-audit").exit(), "the restored trail is sound");
        shortenTheTrail(folder.resolve("other/data"));
        checksBroken(elsewhere);
        Path shortened = folder.resolve("shortened.backup");
        assertDone(PackagedCommand.run(elsewhere, "backup", shortened.toString()));
        Map<String, String> third = Map.of("steadwork.data-folder", folder.resolve("third/data").toString(), "steadwork.backup.key", "a backup key for this test");
        assertDone(PackagedCommand.run(third, "restore", shortened.toString()));
        checksBroken(third);
        try (PackagedApplication clinic = PackagedApplication.startKeeping(folder.resolve("other"), Map.of())) {
            assertTrue(signedIn(clinic).open("/patients?q=Otterbourne").expect(200).words().contains("Otterbourne"));
        }
    }

    /** Whoever can write to the database takes the last two entries out and moves the record of its end. */
    private static void shortenTheTrail(Path data) throws Exception {
        try (Connection db = DriverManager.getConnection("jdbc:h2:file:" + data + "/clinic;TRACE_LEVEL_FILE=0;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE")) {
            for (String change : List.of("delete from audit_event where id in (select event_id from audit_seal where sequence > (select sealed - 2 from audit_head))",
                    "delete from audit_seal where sequence > (select sealed - 2 from audit_head)",
                    "update audit_head set sealed = sealed - 2, hash = (select s.hash from audit_seal s where s.sequence = (select max(sequence) from audit_seal))")) {
                db.createStatement().execute(change);
            }
        }
    }

    private static void checksBroken(Map<String, String> settings) {
        PackagedCommand check = PackagedCommand.run(settings, "check-audit");
        assertEquals(1, check.exit(), check.output());
        assertTrue(check.output().contains("the file beside the database knows of"), check.output());
    }

    @Test
    void aSecondProcessOnTheSameFolderIsRefusedAndTheFirstGoesOn() {
        try (PackagedApplication clinic = beginning(Map.of())) {
            refused(Map.of(), "open in another process");
            command(Map.of("steadwork.backup.key", "a backup key for this test"), "backup", folder.resolve("b").toString()).assertRefused("open in another process");
            command(Map.of("steadwork.database.new-key", "x".repeat(40)), "change-database-key").assertRefused("open in another process");
            command(Map.of(), "compact").assertRefused("open in another process");
            assertEquals(200, new Guest(clinic.address()).open("/sign-in").status());
        }
    }

    @Test
    void aDamagedFileIsSaidAndLeftAsItIs() throws Exception {
        beginClinic(Map.of());
        Path file = data.resolve("clinic.mv.db");
        byte[] whole = Files.readAllBytes(file);
        byte[] zeroed = whole.clone();
        Arrays.fill(zeroed, 0, 8192, (byte) 0);
        byte[] noise = new byte[whole.length];
        new Random(5).nextBytes(noise);
        for (byte[] broken : List.of(zeroed, noise, Arrays.copyOf(whole, 100), "not a database".getBytes())) {
            Files.write(file, broken);
            refused(Map.of(), "restore the last backup");
            assertTrue(Arrays.equals(broken, Files.readAllBytes(file)), "the damaged file was changed");
        }
        Files.write(file, whole);
        try (PackagedApplication clinic = PackagedApplication.startKeeping(folder, Map.of())) {
            signedIn(clinic).open("/patients?q=Otterbourne").expect(200);
        }
    }

    @Test
    void aDatabaseOfANewerProgramIsNotTouched() throws Exception {
        beginClinic(Map.of());
        try (Connection db = open("", "")) {
            db.createStatement().execute("insert into flyway_schema_history (\"installed_rank\", \"version\", \"description\", \"type\", \"script\", \"installed_by\","
                    + " \"execution_time\", \"success\") values (9999, '2099.01.01.01', 'later', 'SQL', 'V2099_01_01_01__later.sql', '', 1, true)");
        }
        refused(Map.of(), "newer Steadwork");
    }

    /** A small disk of its own, in memory; needs the right to mount one. */
    @Test
    void aFullDiskIsSaidBeforeTheStartAndWhileRunningAndNothingAcknowledgedIsLost() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(mounted("mount", "-t", "tmpfs", "-o", "size=48m", "tmpfs", disk.toString()), "this user may not mount a small disk");
        settings.put("steadwork.data-folder", disk.resolve("data").toString());
        data = disk.resolve("data");
        try {
            Path filler = disk.resolve("filler");
            String last;
            try (PackagedApplication clinic = beginning(Map.of("steadwork.data-folder", data.toString()))) {
                Guest guest = signedIn(clinic);
                fill(filler);
                last = register(guest, 3000);
                assertEquals(503, guest.status(), guest.words());
                assertTrue(guest.words().contains("not acknowledged as saved is not stored"), guest.words());
                assertFalse(guest.page().outerHtml().contains("Exception"), guest.words());
                refused(Map.of(), "MB left");
                Files.delete(filler);
                long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
                while (guest.open("/patients").status() != 200 && System.nanoTime() < end) {
                    TimeUnit.MILLISECONDS.sleep(500);
                }
                assertEquals(200, guest.status(), "it recovers by itself: " + guest.words());
            }
            try (Connection db = open("", "")) {
                assertTrue(RowByRow.of(db).get("patient").stream().anyMatch(row -> row.contains("family_name=" + last)), "the last acknowledged patient, " + last);
            }
        } finally {
            mounted("umount", disk.toString());
        }
    }

    @Test
    void aReadOnlyDataFolderIsSaid() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(mounted("mount", "-t", "tmpfs", "-o", "size=48m,ro", "tmpfs", disk.toString()), "this user may not mount a read-only disk");
        try {
            settings.put("steadwork.data-folder", disk.resolve("data").toString());
            refused(Map.of(), "cannot be written to");
            settings.put("steadwork.data-folder", disk.toString());
            refused(Map.of(), "cannot be written to");
        } finally {
            mounted("umount", disk.toString());
        }
    }

    @Test
    void aClockThatStandsBeforeTheLastEntryIsSaidAndNothingElseChanges() {
        try (PackagedApplication clinic = beginning(Map.of("steadwork.demo-now", "2031-05-05T09:00"))) {
            signedIn(clinic).open("/clinic").expect(200);
        }
        try (PackagedApplication clinic = PackagedApplication.startKeeping(folder, Map.of("steadwork.demo-now", "2031-05-02T09:00"))) {
            assertTrue(clinic.log().contains("clock stands at"), clinic.log());
            assertTrue(signedIn(clinic).open("/clinic").expect(200).words().contains("This computer’s clock is wrong"));
        }
    }

    /** Needs a jar built for PostgreSQL; DEVELOPERS.md says how. */
    @Test
    void aPostgresqlThatGoesAndComesIsSaidAndComesBackByItself() throws Exception {
        String jar = System.getProperty("steadwork.postgresql.jar", "");
        assumeTrue(Files.isRegularFile(Path.of(jar)), "no jar built for PostgreSQL was named with -Dsteadwork.postgresql.jar");
        Path store = folder.resolve("store");
        EmbeddedPostgres server = EmbeddedPostgres.builder().setDataDirectory(store).setCleanDataDirectory(false).start();
        int port = server.getPort();
        Map<String, String> on = Map.of("quarkus.datasource.jdbc.url", "jdbc:postgresql://localhost:" + port + "/postgres", "quarkus.datasource.username", "postgres",
                "quarkus.datasource.password", "postgres", "quarkus.datasource.jdbc.acquisition-timeout", "3");
        try (PackagedApplication clinic = PackagedApplication.startKeeping(Path.of(jar), folder, on)) {
            firstAccount(clinic);
            Guest guest = signedIn(clinic);
            String last = register(guest, 5);
            server.close();
            guest.open("/patients");
            assertEquals(503, guest.status(), guest.words());
            assertTrue(guest.words().contains("wait a little"), guest.words());
            PackagedCommand.run(Path.of(jar), on).assertRefused("does not answer");
            server = EmbeddedPostgres.builder().setDataDirectory(store).setCleanDataDirectory(false).setPort(port).start();
            guest.open("/patients?q=" + last).expect(200);
            assertTrue(guest.words().contains(last), guest.words());
        } finally {
            server.close();
        }
    }

    private static boolean mounted(String... command) throws IOException, InterruptedException {
        try {
            return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor() == 0;
        } catch (IOException notThere) {
            return false;
        }
    }

    private static void fill(Path filler) throws IOException {
        byte[] block = new byte[64 * 1024];
        try (OutputStream out = Files.newOutputStream(filler)) {
            while (true) {
                out.write(block);
            }
        } catch (IOException full) {
            // that is what was wanted
        }
    }

    /** Registers patients until one is refused or enough are there; returns the family name of the last that was acknowledged. */
    private static String register(Guest guest, int most) {
        String last = "Otterbourne";
        for (int i = 0; i < most; i++) {
            String name = "Nameof" + (char) ('a' + i / 676 % 26) + (char) ('a' + i / 26 % 26) + (char) ('a' + i % 26);
            if (guest.open("/patients/new").status() != 200) {
                return last;
            }
            guest.formWithButton("Register the patient").set("givenName", "Invented").set("sex", "not_recorded").set("handedness", "not_recorded").set("familyName", name).set("birthDate", "1980-02-" + (10 + i % 18))
                    .set("address", "x".repeat(390)).send();
            if (guest.offersForm("input[name=anotherPerson]")) {
                guest.formWithButton("Register the patient").tick("anotherPerson", "yes").send();
            }
            if (guest.status() != 200) {
                return last;
            }
            last = name;
        }
        return last;
    }

    private void beginClinic(Map<String, String> more) {
        beginning(more).close();
    }

    /** Starts a new clinic with a lead and one patient in it. */
    private PackagedApplication beginning(Map<String, String> more) {
        PackagedApplication clinic = PackagedApplication.startKeeping(folder, more);
        try {
            fill(clinic);
        } catch (RuntimeException | Error e) {
            clinic.close();
            throw e;
        }
        return clinic;
    }

    private static void fill(PackagedApplication clinic) {
        firstAccount(clinic);
        signedIn(clinic).open("/patients/new").expect(200).formWithButton("Register the patient").set("givenName", "Invented").set("sex", "not_recorded").set("handedness", "not_recorded").set("familyName", "Otterbourne")
                .set("birthDate", "1979-09-09").send().expect(200);
    }

    private static void firstAccount(PackagedApplication clinic) {
        Matcher link = FIRST_RUN.matcher(clinic.log());
        assertTrue(link.find(), clinic::log);
        new Guest(clinic.address()).open(link.group()).expect(200).formWithButton("Make the account").set("userName", "mara").set("fullName", "Mara Invented")
                .set("displayName", "M. Invented").set("password", PASSWORD).set("passwordAgain", PASSWORD).send().expect(200);
    }

    private static Guest signedIn(PackagedApplication clinic) {
        return new Guest(clinic.address()).open("/sign-in").expect(200).formWithButton("Sign in").set("userName", "mara").set("password", PASSWORD).send().expect(200);
    }

    private PackagedCommand command(Map<String, String> more, String... words) {
        Map<String, String> all = new HashMap<>(settings);
        all.putAll(more);
        return PackagedCommand.run(all, words);
    }

    private void refused(Map<String, String> more, String words) {
        command(more).assertRefused(words);
    }

    private static void assertDone(PackagedCommand command) {
        assertEquals(0, command.exit(), command.output());
    }

    private Connection open(String user, String password) throws Exception {
        return DriverManager.getConnection("jdbc:h2:file:" + data + "/clinic;WRITE_DELAY=0;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE", user, password);
    }

    private Map<String, List<String>> rows(String user, String password) throws Exception {
        try (Connection db = open(user, password)) {
            return RowByRow.of(db);
        }
    }
}
