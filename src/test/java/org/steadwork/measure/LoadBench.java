package org.steadwork.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steadwork.account.OpaqueToken;
import org.steadwork.journey.PackagedApplication;
import org.steadwork.journey.PackagedCommand;

/**
 * A mixed day of clinicians over an invented clinic: nine answers of ten are pages, one is a save. Loopback only. {@code -Dsteadwork.load.minutes=10
 * -Dsteadwork.load.cases=100000} makes it a long one; {@code steadwork.load.people} (50) and {@code steadwork.load.pause} (milliseconds a page is read
 * on average, 3000) say how hard. Every answer that is not the one wanted fails it. What was measured is kept as JSON in {@code target} too.
 */
class LoadBench {

    private static final int MINUTES = Integer.getInteger("steadwork.load.minutes", 1);
    private static final int CASES = Integer.getInteger("steadwork.load.cases", 1_000);
    private static final int PEOPLE = Integer.getInteger("steadwork.load.people", 50);
    private static final int PAUSE = Integer.getInteger("steadwork.load.pause", 3_000);
    private static final int WARM_UP_SECONDS = 20;
    private static final int SAMPLE_SECONDS = 5;
    private static final int SHOWN = 5;

    @TempDir
    Path folder;

    private volatile boolean goOn = true;

    @Test
    void aMixedDay() throws Exception {
        Map<String, String> settings = Map.of("steadwork.data-folder", folder.resolve("data").toString(), "steadwork.session.idle-minutes", "600");
        PackagedApplication.startKeeping(folder, settings).close(); // makes the tables
        List<Long> all;
        List<Long> open;
        List<String> sessions;
        try (Connection db = DriverManager.getConnection("jdbc:h2:file:" + folder + "/data/clinic;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH")) {
            new InventedClinic(db, 42, LocalDate.now()).fill(CASES);
            all = numbers(db, "select id from case_file");
            open = numbers(db, "select id from case_file where closed_on is null and exists (select 1 from symptom_report s where s.case_file_id = case_file.id) order by id");
            sessions = sessions(db);
        }
        for (String command : List.of("sum-up", "compact")) {
            assertEquals(0, PackagedCommand.run(settings, command).exit());
        }
        assertTrue(open.size() >= PEOPLE, "only " + open.size() + " open cases");
        try (PackagedApplication application = PackagedApplication.startKeeping(folder, settings)) {
            List<LoadClinician> people = new ArrayList<>();
            for (int i = 0; i < PEOPLE; i++) {
                int which = i;
                List<Long> own = IntStream.range(0, open.size()).filter(place -> place % PEOPLE == which).mapToObj(open::get).toList();
                people.add(new LoadClinician(application.address(), sessions.get(i), all, own, 1_000 + i, PAUSE, () -> goOn));
            }
            run(application, people);
        }
    }

    private void run(PackagedApplication application, List<LoadClinician> people) throws Exception {
        List<Thread> threads = people.stream().map(Thread::new).toList();
        threads.forEach(Thread::start);
        TimeUnit.SECONDS.sleep(WARM_UP_SECONDS);
        Memory first = Memory.of(application.pid());
        List<Long> samples = new ArrayList<>();
        long begun = System.nanoTime();
        while (System.nanoTime() - begun < TimeUnit.MINUTES.toNanos(MINUTES)) {
            TimeUnit.SECONDS.sleep(SAMPLE_SECONDS);
            samples.add(Memory.resident(application.pid()));
        }
        double seconds = (System.nanoTime() - begun) / 1e9 + WARM_UP_SECONDS;
        goOn = false;
        for (Thread thread : threads) {
            thread.join(TimeUnit.SECONDS.toMillis(60));
            assertTrue(!thread.isAlive(), "somebody waits for an answer still");
        }
        Memory last = Memory.of(application.pid());
        List<LoadClinician.Answer> answers = people.stream().flatMap(one -> one.answers().stream()).toList();
        put(answers, seconds, first, last, samples);
        List<String> wrong = answers.stream().filter(one -> one.wrong() != null).map(one -> one.what() + ": " + one.wrong()).distinct().limit(SHOWN).toList();
        assertTrue(wrong.isEmpty(), () -> String.join("\n", wrong));
        assertTrue(!application.log().contains("ERROR"), "the log holds errors");
        long saves = answers.stream().filter(LoadClinician.Answer::save).count();
        assertTrue(saves > answers.size() / 20 && saves < answers.size() / 7, saves + " saves of " + answers.size() + " answers");
    }

    private void put(List<LoadClinician.Answer> answers, double seconds, Memory first, Memory last, List<Long> samples) throws IOException {
        Map<String, Object> kept = new LinkedHashMap<>();
        kept.put("cases", CASES);
        kept.put("people", PEOPLE);
        kept.put("minutes", MINUTES);
        kept.put("pauseMilliseconds", PAUSE);
        kept.put("answers", answers.size());
        kept.put("errors", answers.stream().filter(one -> one.wrong() != null).count());
        kept.put("answersASecond", answers.size() / seconds);
        Spread reads = Spread.of(answers.stream().filter(one -> !one.save()).toList());
        Spread saves = Spread.of(answers.stream().filter(LoadClinician.Answer::save).toList());
        kept.put("reads", reads);
        kept.put("saves", saves);
        kept.put("byPage", answers.stream().collect(Collectors.groupingBy(LoadClinician.Answer::what, TreeMap::new, Collectors.collectingAndThen(Collectors.toList(), Spread::of))));
        kept.put("memoryAtStart", first);
        kept.put("memoryAtEnd", last);
        kept.put("residentMegabytesEvery5Seconds", samples);
        Path file = Path.of("target", "load-" + CASES + "-cases-" + MINUTES + "-minutes.json");
        Files.createDirectories(file.getParent());
        new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT).writeValue(file.toFile(), kept);
        BenchmarkPage.put("Load", String.format(Locale.ROOT, """
                %d clinicians at work for %d minutes over %,d invented cases on H2, loopback only, after %d s of warming up: each reads a page for %.1f s on average;
                one answer of ten is a save. The load itself ran on the same processors. Heap is what is in use after a collection.

                | | answers | median, ms | 99 of 100 under, ms | longest, ms |
                | --- | --- | --- | --- | --- |
                | pages | %s |
                | saves | %s |

                %.1f answers a second, %d errors. Memory at the start and at the end: heap %d and %d MB, resident %d and %d MB.""", PEOPLE, MINUTES, CASES, WARM_UP_SECONDS,
                PAUSE / 1e3, reads.row(), saves.row(), answers.size() / seconds, answers.stream().filter(one -> one.wrong() != null).count(), first.heapMegabytes(),
                last.heapMegabytes(), first.residentMegabytes(), last.residentMegabytes()));
    }

    /** How long answers took. */
    record Spread(int answers, double medianMilliseconds, double p99Milliseconds, double longestMilliseconds) {

        static Spread of(List<LoadClinician.Answer> answers) {
            double[] sorted = answers.stream().mapToDouble(LoadClinician.Answer::milliseconds).sorted().toArray();
            return sorted.length == 0 ? new Spread(0, 0, 0, 0)
                    : new Spread(sorted.length, sorted[sorted.length / 2], sorted[(int) Math.ceil(sorted.length * 0.99) - 1], sorted[sorted.length - 1]);
        }

        String row() {
            return String.format(Locale.ROOT, "%,d | %.0f | %.0f | %.0f", answers, medianMilliseconds, p99Milliseconds, longestMilliseconds);
        }
    }

    /** What a process holds: the heap in use after a collection, and what is resident. */
    record Memory(long heapMegabytes, long residentMegabytes) {

        static Memory of(long pid) throws IOException, InterruptedException {
            ask(pid, "GC.run");
            long used = ask(pid, "GC.heap_info").lines().filter(line -> line.matches(".*(generation|heap).* used \\d+K.*") && !line.contains("Metaspace"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll(".* used (\\d+)K.*", "$1"))).sum();
            return new Memory(used / 1024, resident(pid));
        }

        static long resident(long pid) throws IOException {
            String line = Files.readAllLines(Path.of("/proc", String.valueOf(pid), "status")).stream().filter(one -> one.startsWith("VmRSS")).findFirst().orElseThrow();
            return Long.parseLong(line.replaceAll("\\D", "")) / 1024;
        }

        private static String ask(long pid, String what) throws IOException, InterruptedException {
            Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "jcmd").toString(), String.valueOf(pid), what).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes());
            process.waitFor();
            return said;
        }
    }

    private static List<Long> numbers(Connection db, String sql) throws SQLException {
        List<Long> numbers = new ArrayList<>();
        try (Statement statement = db.createStatement(); ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                numbers.add(rows.getLong(1));
            }
        }
        return numbers;
    }

    /** Clinicians who are signed in already: signing in is slowed down on purpose, and is no part of the day that is measured. */
    private static List<String> sessions(Connection db) throws SQLException {
        List<String> tokens = new ArrayList<>();
        try (PreparedStatement account = db.prepareStatement("insert into account (id, version, user_name, full_name, display_name, password_hash, role, active, created_at)"
                + " values (?, 0, ?, 'Invented Clinician', 'I. Clinician', 'nobody signs in with this', 'CLINICIAN', true, ?)");
                PreparedStatement session = db.prepareStatement("insert into sign_in_session (token_hash, account_id, began_at, seen_at, id, wrong_codes) values (?, ?, ?, ?, ?, 0)")) {
            OffsetDateTime now = OffsetDateTime.now();
            for (int i = 0; i < PEOPLE; i++) {
                long id = 5_000_000 + i;
                account.setLong(1, id);
                account.setString(2, "load-" + i);
                account.setObject(3, now);
                account.execute();
                String token = OpaqueToken.fresh();
                session.setString(1, OpaqueToken.hash(token));
                session.setLong(2, id);
                session.setObject(3, now);
                session.setObject(4, now);
                session.setLong(5, id);
                session.execute();
                tokens.add(token);
            }
        }
        return tokens;
    }
}
