package org.steadwork.storage;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.journey.Guest;
import org.steadwork.journey.PackagedApplication;

/**
 * The packaged demo is killed at random moments while several people write, every third time while it is ending (the file is made small then). After each kill the database is read directly: every write that was
 * acknowledged is there, nothing is there by half, and the chain of the audit trail is whole. {@code ./mvnw -Pkill verify} does 200 rounds on each database, {@code -Plong} a few; the
 * usual run a few on H2.
 */
class KillIT {

    private static final int ROUNDS = Integer.getInteger("steadwork.kill.rounds", 3);
    private static final long SEED = Long.getLong("steadwork.kill.seed", 20301216L);
    private static final String KEY = "a database key for this test alone, 32 and more";
    private static final int LONGEST_MILLIS = 2500;
    private static final int FEWEST_WRITES = 4;
    private static final int MOST_LOOKS = 1500;

    @TempDir
    Path folder;

    /** A database as the program is told of it, and as this test opens it. */
    private record Base(Path jar, Map<String, String> settings, Opening opening) {
    }

    private interface Opening {
        Connection open() throws Exception;
    }

    @Test
    void onH2() throws Exception {
        String url = "jdbc:h2:file:" + folder + "/data/demo;WRITE_DELAY=0;TRACE_LEVEL_FILE=0;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE";
        rounds("H2", new Base(null, Map.of(), () -> DriverManager.getConnection(url)));
    }

    @Test
    @Tag("long")
    void onSealedH2() throws Exception {
        String url = "jdbc:h2:file:" + folder + "/data/demo;CIPHER=AES;WRITE_DELAY=0;TRACE_LEVEL_FILE=0;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE";
        rounds("sealed H2", new Base(null, Map.of("steadwork.database.key", KEY),
                () -> DriverManager.getConnection(url, "", DatabaseKey.of(KEY).filePassword() + " ")));
    }

    /** Needs a jar built for PostgreSQL; DEVELOPERS.md says how. */
    @Test
    @Tag("long")
    void onPostgresql() throws Exception {
        String jar = System.getProperty("steadwork.postgresql.jar", "");
        assumeTrue(Files.isRegularFile(Path.of(jar)), "no jar built for PostgreSQL was named with -Dsteadwork.postgresql.jar");
        try (EmbeddedPostgres server = EmbeddedPostgres.start()) {
            String url = server.getJdbcUrl("postgres", "postgres");
            rounds("PostgreSQL", new Base(Path.of(jar), Map.of("quarkus.datasource.jdbc.url", url, "quarkus.datasource.username", "postgres",
                    "quarkus.datasource.password", "postgres"), () -> DriverManager.getConnection(url, "postgres", "postgres")));
        }
    }

    private void rounds(String name, Base base) throws Exception {
        Map<String, String> settings = new TreeMap<>(base.settings());
        settings.put("quarkus.profile", "demo");
        settings.put("steadwork.session.idle-minutes", "600");
        Random random = new Random(SEED);
        WriterBook book = new WriterBook();
        int acknowledged = 0;
        List<Guest> guests = List.of();
        for (int round = 1; round <= ROUNDS; round++) {
            PackagedApplication application = base.jar() == null ? PackagedApplication.startKeeping(folder, settings)
                    : PackagedApplication.startKeeping(base.jar(), folder, settings);
            List<Thread> writers = new ArrayList<>();
            try {
                // a session is an acknowledged write too: whoever signed in once stays so
                guests = round == 1 ? KillWriter.signedIn(application.address()) : guests.stream().map(guest -> guest.movedTo(application.address())).toList();
                for (KillWriter writer : KillWriter.all(guests, book, round)) {
                    writer.begin();
                    writers.add(new Thread(writer, writer.toString()));
                }
                writers.forEach(Thread::start);
                if (random.nextInt(4) > 0) {
                    awaitWrites(book, acknowledged + FEWEST_WRITES);
                }
                TimeUnit.MILLISECONDS.sleep(100 + random.nextInt(LONGEST_MILLIS));
            } finally {
                if (round % 3 == 0) {
                    application.killWhileEnding(random.nextInt(LONGEST_MILLIS));
                } else {
                    application.kill();
                }
            }
            for (Thread writer : writers) {
                writer.join(TimeUnit.SECONDS.toMillis(60));
                assertTrue(!writer.isAlive(), writer.getName() + " hangs");
            }
            String context = name + ", round " + round + " of seed " + SEED;
            assertTrue(book.surprises().isEmpty(), () -> context + ": " + book.surprises());
            try (Connection db = base.opening().open()) {
                List<String> wrong = new KillCheck(db).of(book);
                wrong.addAll(new KillTrail(db, folder.resolve("data/demo-audit-end.txt")).wrong());
                assertTrue(wrong.isEmpty(), () -> context + ": " + wrong);
            }
            acknowledged = book.acknowledged();
            note(String.format("%s: round %d, %d writes acknowledged so far, all there%n", name, round, acknowledged));
        }
        assertTrue(acknowledged > 2 * ROUNDS, "the writers hardly wrote: " + acknowledged);
    }

    /** On a slow machine the process would else be killed before anything was written, three times of four. */
    private static void awaitWrites(WriterBook book, int wanted) throws InterruptedException {
        for (int i = 0; i < MOST_LOOKS && book.acknowledged() < wanted && book.surprises().isEmpty(); i++) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
    }

    private static void note(String line) throws IOException {
        String file = System.getProperty("steadwork.kill.log", "");
        if (!file.isEmpty()) {
            Files.writeString(Path.of(file), line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        }
    }
}
