package org.steadwork.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.journey.Guest;
import org.steadwork.journey.PackagedApplication;
import org.steadwork.journey.PackagedCommand;

/**
 * Two packaged nodes on one PostgreSQL, without any proxy: what a proxy without memory would do is done here, a browser's next request going
 * to the other node. Needs the application built by {@code ./mvnw -Ppostgresql package -Dmaven.test.skip}.
 */
@Tag("long")
class TwoNodesIT {

    private static final int TURN_SECONDS = 6;
    private static final String HELD = "select holder from work_turn where work = 'today' and held_until > current_timestamp";

    @TempDir
    Path folder;

    private final Path jar = Path.of(System.getProperty("steadwork.postgresql.jar", ""));
    private final ExecutorService both = Executors.newFixedThreadPool(2);
    private final Map<String, PackagedApplication> nodes = new HashMap<>();
    private EmbeddedPostgres server;
    private String url;

    @BeforeEach
    void startTheServer() throws Exception {
        assumeTrue(Files.isRegularFile(jar), "no application built for PostgreSQL at '" + jar + "'");
        server = EmbeddedPostgres.start();
        url = server.getJdbcUrl("postgres", "postgres");
    }

    @AfterEach
    void end() throws Exception {
        both.shutdownNow();
        for (PackagedApplication node : nodes.values()) {
            node.kill();
        }
        if (server != null) {
            server.close();
        }
    }

    @Test
    void aClinicOnTwoNodes() throws Exception {
        twoStartOnAnEmptyDatabaseAtOnce();
        aSessionIsAtHomeOnBoth();
        twoEditsOfOneFormLeaveOneAndAConflict();
        laterRecordsHaveHigherNumbers();
        theSchemaStandsWhileANodeRuns();
        workByTheClockIsDoneOnceAndOutlivesTheNodeThatBeganIt();
        aKilledNodeTakesNothingWithIt();
    }

    @Test
    void whatIsMissingIsSaidInWords() throws Exception {
        Map<String, String> none = Map.of("steadwork.data-folder", folder.resolve("data").toString(), "quarkus.http.port", "0");
        PackagedCommand.run(jar, none).assertRefused("No database is named");
        PackagedCommand.run(jar, with(none, "quarkus.datasource.jdbc.url", "jdbc:postgresql://127.0.0.1:1/clinic")).assertRefused("does not answer");
        PackagedCommand.run(jar, with(none, "quarkus.datasource.jdbc.url", url.replace("/postgres?", "/nowhere?"))).assertRefused("There is no database at");
        PackagedCommand.run(jar, with(settings("data"), "quarkus.datasource.jdbc.url", url.replace("user=postgres", "user=nobody"))).assertRefused("does not let this user in");
        try (Connection other = open()) {
            assertTrue(lock(other, "select pg_try_advisory_lock(" + 0x737465616477_01L + ")"));
            PackagedCommand.run(jar, with(settings("data"), "steadwork.postgresql.start-wait-seconds", "2")).assertRefused("Another node has been starting");
        }
    }

    private static boolean lock(Connection db, String sql) throws SQLException {
        try (Statement statement = db.createStatement(); ResultSet row = statement.executeQuery(sql)) {
            return row.next() && row.getBoolean(1);
        }
    }

    private void twoStartOnAnEmptyDatabaseAtOnce() throws Exception {
        List<Callable<PackagedApplication>> starts = List.of(() -> start("a"), () -> start("b"));
        for (Future<PackagedApplication> started : both.invokeAll(starts)) {
            started.get();
        }
        String logs = nodes.get("a").log() + nodes.get("b").log();
        assertTrue(logs.contains("Another node is starting"), logs);
        assertFalse(logs.contains("ERROR"), logs);
        Map<String, Long> scripts = Map.of("all", number("select count(*) from flyway_schema_history where version is not null"),
                "different", number("select count(distinct version) from flyway_schema_history where success"));
        assertEquals(scripts.get("all"), scripts.get("different"));
        try (Connection db = open()) {
            assertEquals(Migrations.carried().last(), SchemaVersion.of(db).orElseThrow());
        }
        assertEquals(number("select count(*) from demo_part"), number("select count(distinct part) from demo_part"));
        assertEquals(1, number("select count(*) from account where user_name = 'tamsin'"));
        assertEquals(12, number("select count(*) from case_file"));
    }

    private void aSessionIsAtHomeOnBoth() {
        Guest atA = signedIn("a", "tamsin");
        Guest atB = atA.movedTo(address("b")).open("/patients").expect(200);
        assertTrue(atB.at().getPath().equals("/patients"), atB.at().toString());
        atB.open("/patients/new").expect(200).formWithButton("Register the patient").set("givenName", "Invented").set("familyName", "Twonodes").set("sex", "not_recorded")
                .set("handedness", "not_recorded").set("birthDate", "1981-03-04").send().expect(200);
        assertTrue(atA.open("/patients?q=Twonodes").expect(200).words().contains("Twonodes"));
        // a page of one node is sent to the other
        Guest moved = atA.open("/patients/new").expect(200).formWithButton("Register the patient").set("givenName", "Invented").set("familyName", "Crossed").set("sex", "not_recorded")
                .set("handedness", "not_recorded").set("birthDate", "1982-03-04").sendAt(address("b")).expect(200);
        assertTrue(moved.words().contains("Crossed"), moved.words());
        atB.open("/").expect(200).form("form[action='/sign-out']").send();
        assertTrue(atA.open("/patients").at().getPath().startsWith("/sign-in"), "signed out on one is signed out on both");
    }

    private void twoEditsOfOneFormLeaveOneAndAConflict() throws Exception {
        List<Guest> clinicians = List.of(signedIn("a", "tamsin"), signedIn("b", "idris"));
        String path = symptomsOf(clinicians.get(0), 2);
        CyclicBarrier together = new CyclicBarrier(2);
        List<Callable<Guest>> saves = new ArrayList<>();
        for (Guest guest : clinicians) {
            guest.open(path).expect(200);
            saves.add(() -> {
                together.await(20, TimeUnit.SECONDS);
                return guest.formWithButton("Save symptoms").set("ownWords", words(clinicians.indexOf(guest))).send();
            });
        }
        List<Guest> answers = new ArrayList<>();
        for (Future<Guest> save : both.invokeAll(saves)) {
            answers.add(save.get());
        }
        assertEquals(List.of(200, 409), answers.stream().map(Guest::status).sorted().toList());
        int refused = answers.get(0).status() == 409 ? 0 : 1;
        assertEquals(words(refused), answers.get(refused).page().select("#ownWords").text(), "the text of who came second is still in the form");
        assertTrue(answers.get(refused).page().select("#ownWords-stored").text().contains(words(1 - refused)), "and what was stored stands beside it");
        assertEquals(1, number("select count(*) from symptom_report where own_words = '" + words(1 - refused) + "'"));
        answers.get(refused).formWithButton("Save symptoms").send().expect(200);
        assertEquals(1, number("select count(*) from symptom_report where own_words = '" + words(refused) + "'"));
    }

    private static String words(int of) {
        return "typed on node " + of;
    }

    /** Of two lines of the trail the later has the higher number, whichever node wrote it. */
    private void laterRecordsHaveHigherNumbers() throws SQLException {
        Guest atA = signedIn("a", "tamsin");
        Guest atB = signedIn("b", "idris");
        long before = number("select max(id) from audit_event");
        for (int i = 0; i < 5; i++) {
            atA.open("/cases/3/symptoms").expect(200);
            atB.open("/cases/4/symptoms").expect(200);
        }
        List<Long> cases = new ArrayList<>();
        try (Connection db = open(); Statement sql = db.createStatement();
                ResultSet rows = sql.executeQuery("select case_file_id from audit_event where id > " + before + " and action like 'viewed%' order by id")) {
            while (rows.next()) {
                cases.add(rows.getLong(1));
            }
        }
        assertEquals(List.of(3L, 4L, 3L, 4L, 3L, 4L, 3L, 4L, 3L, 4L), cases);
    }

    /** A newer program, which would move the schema on, does not start beside an older one. */
    private void theSchemaStandsWhileANodeRuns() throws SQLException {
        String last = Migrations.carried().last();
        change("update flyway_schema_history set version = '0.' || version where version = '" + last + "'");
        PackagedCommand.run(jar, settings("c")).assertRefused("End every node first");
        change("update flyway_schema_history set version = '" + last + "' where version = '0." + last + "'");
        Map<String, String> move = with(settings("c"), "steadwork.data-folder", folder.resolve("h2").toString());
        PackagedCommand.run(jar, move, "move-to-postgresql").assertRefused("There is no clinic at");
    }

    private void workByTheClockIsDoneOnceAndOutlivesTheNodeThatBeganIt() throws Exception {
        await("a backup by the clock", () -> number("select count(*) from backup_run where rows_kept is not null") > 0);
        try (Connection blocker = open(); Statement sql = blocker.createStatement()) {
            blocker.setAutoCommit(false);
            sql.execute("select id from worklist_state for update");
            await("a node at its turn", () -> !text(HELD).isEmpty());
            String holder = text(HELD);
            String dead = holder.startsWith(nodes.get("a").pid() + "-") ? "a" : "b";
            assertTrue(holder.startsWith(nodes.get(dead).pid() + "-"), holder);
            nodes.get(dead).kill();
            assertEquals(holder, text(HELD), "the killed node’s turn stands");
            blocker.rollback();
            long killed = System.nanoTime();
            await("the other at it", () -> number("select count(*) from work_turn where work = 'today' and last_done_at is not null and holder not like '"
                    + nodes.get(dead).pid() + "-%'") == 1);
            assertTrue(System.nanoTime() - killed < TimeUnit.SECONDS.toNanos(TURN_SECONDS + 15), "it took longer than a turn and a look");
            start(dead);
        }
        assertEquals(1, number("select count(*) from backup_run"), "both nodes looked, and one backup was made");
    }

    private void aKilledNodeTakesNothingWithIt() throws Exception {
        WriterBook book = new WriterBook();
        // two who register patients and one who changes symptoms
        List<KillWriter> writers = new ArrayList<>(KillWriter.all(KillWriter.signedIn(address("a")), book, 1).subList(0, 3));
        writers.add(KillWriter.all(KillWriter.signedIn(address("b")), book, 2).get(0));
        Guest working = signedIn("a", "philippa");
        List<Thread> threads = new ArrayList<>();
        for (KillWriter writer : writers) {
            writer.begin();
            threads.add(new Thread(writer, writer.toString()));
        }
        threads.forEach(Thread::start);
        await("enough written", () -> book.acknowledged() > 20);
        nodes.get("a").kill();
        int byThen = book.acknowledged();
        assertEquals("/patients", working.movedTo(address("b")).open("/patients").expect(200).at().getPath(), "who worked on the killed node is signed in on the other");
        await("the other node going on", () -> book.acknowledged() > byThen);
        nodes.get("b").kill();
        for (Thread thread : threads) {
            thread.join(TimeUnit.SECONDS.toMillis(60));
            assertFalse(thread.isAlive(), thread.getName() + " hangs");
        }
        assertEquals(List.of(), book.surprises());
        try (Connection db = open()) {
            assertEquals(List.of(), new KillCheck(db).of(book));
        }
    }

    private Guest signedIn(String node, String user) {
        return new Guest(address(node)).open("/sign-in").expect(200).formWithButton("Sign in").set("userName", user).set("password", "desk-and-daylight").send().expect(200);
    }

    private static String symptomsOf(Guest guest, long caseId) {
        Matcher link = Pattern.compile("/cases/" + caseId + "/symptoms/\\d+").matcher(guest.open("/cases/" + caseId + "/symptoms").expect(200).page().outerHtml());
        assertTrue(link.find(), "no report of symptoms in case " + caseId);
        return link.group();
    }

    private URI address(String node) {
        return nodes.get(node).address();
    }

    private PackagedApplication start(String node) throws Exception {
        Path own = Files.createDirectories(folder.resolve(node));
        PackagedApplication started = PackagedApplication.startKeeping(jar, own, settings(node));
        synchronized (nodes) {
            nodes.put(node, started);
        }
        return started;
    }

    private Map<String, String> settings(String node) {
        return new HashMap<>(Map.of("quarkus.profile", "demo", "quarkus.http.port", "0", "steadwork.data-folder", folder.resolve(node).resolve("data").toString(),
                "quarkus.datasource.jdbc.url", url, "quarkus.datasource.username", "postgres", "quarkus.datasource.password", "postgres", "steadwork.today.every", "2s",
                "steadwork.backup.look-every", "2s", "steadwork.work-turn-seconds", String.valueOf(TURN_SECONDS), "steadwork.session.idle-minutes", "600"));
    }

    private static Map<String, String> with(Map<String, String> settings, String name, String value) {
        Map<String, String> more = new HashMap<>(settings);
        more.put(name, value);
        return more;
    }

    private Connection open() throws SQLException {
        return DriverManager.getConnection(url, "postgres", "postgres");
    }

    private long number(String sql) throws SQLException {
        return Long.parseLong(text(sql));
    }

    private String text(String sql) throws SQLException {
        try (Connection db = open(); Statement statement = db.createStatement(); ResultSet row = statement.executeQuery(sql)) {
            return row.next() ? String.valueOf(row.getString(1)) : "";
        }
    }

    private void change(String sql) throws SQLException {
        try (Connection db = open(); Statement statement = db.createStatement()) {
            assertEquals(1, statement.executeUpdate(sql));
        }
    }

    private interface Question {
        boolean yes() throws Exception;
    }

    private static void await(String what, Question question) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(150);
        while (!question.yes()) {
            assertTrue(System.nanoTime() < end, "never seen: " + what);
            TimeUnit.MILLISECONDS.sleep(20);
        }
    }
}
