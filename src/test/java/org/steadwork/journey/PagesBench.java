package org.steadwork.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.steadwork.measure.BenchmarkPage;
import org.steadwork.measure.InventedClinic;
import org.steadwork.web.Dates;

/**
 * Measures the pages a clinic uses most over HTTP on the packaged application, with 1,000, 10,000 and 100,000 invented cases, beside the bare
 * SQL for the same rows and a page that asks nothing of the cases. Not a test: run by {@code ./mvnw -Pbench verify -Dit.test=PagesBench};
 * {@code -Dsteadwork.sizes=1000} takes other sizes.
 */
class PagesBench {

    private static final int[] SIZES = Arrays.stream(System.getProperty("steadwork.sizes", "1000,10000,100000").split(",")).mapToInt(Integer::parseInt).toArray();
    private static final String OPTIONS = ";WRITE_DELAY=0;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";
    private static final Path KEPT = Path.of("docs", "benchmarks-pages.json");
    private static final int WORKERS = 4;
    private static final int SECONDS_OF_MAPS = 10;
    private static final int SECONDS_OF_WARMING = 30;

    @Test
    void pagesOfSmallAndLargeClinics() throws Exception {
        Map<String, Object> kept = new LinkedHashMap<>();
        List<PageFigures> all = new ArrayList<>();
        for (int cases : SIZES) {
            PageFigures figures = measure(cases);
            all.add(figures);
            kept.put(String.valueOf(cases), figures);
        }
        new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT).writeValue(KEPT.toFile(), kept);
        BenchmarkPage.put("Pages of a small and a large clinic", text(all));
    }

    private static PageFigures measure(int cases) throws Exception {
        Path folder = Files.createTempDirectory("steadwork-pages");
        try {
            LocalDate today = LocalDate.now();
            String url = "jdbc:h2:file:" + folder.resolve("data").resolve("clinic") + OPTIONS;
            try (PackagedApplication application = PackagedApplication.startKeeping(folder, Map.of())) {
                BenchClient.makeTheLead(application);
            }
            long[] ids;
            List<String> visits;
            try (Connection db = DriverManager.getConnection(url)) {
                new InventedClinic(db, 42, today).fill(cases);
                ids = InventedClinic.openIds(db);
                visits = InventedClinic.visitsToSave(db);
            }
            for (String command : List.of("sum-up", "compact")) {
                assertEquals(0, PackagedCommand.run(Map.of("steadwork.data-folder", folder.resolve("data").toString()), command).exit());
            }
            List<Page> pages = Page.all(today, ids, visits);
            Map<String, Timed> measured = new LinkedHashMap<>();
            double mapsASecond;
            long began = System.nanoTime();
            double start;
            long megabytes;
            try (PackagedApplication application = PackagedApplication.startKeeping(folder, Map.of())) {
                new Guest(application.address()).open("/sign-in").expect(200);
                start = (System.nanoTime() - began) / 1e9;
                BenchClient client = BenchClient.signIn(application);
                client.awaitToday();
                warm(client, pages);
                for (Page page : pages) {
                    measured.put(page.name(), Timed.of(page.times(), page.times() / 2, number -> page.over().ask(client, number)));
                }
                mapsASecond = client.aSecond(WORKERS, SECONDS_OF_MAPS, ids);
                megabytes = residentMegabytes(application.pid());
            }
            Map<String, Timed> bare = new LinkedHashMap<>();
            try (Connection db = DriverManager.getConnection(url)) {
                BareRows rows = new BareRows(db, today, ids);
                for (Page page : pages) {
                    bare.put(page.name(), Timed.of(page.times(), page.times() / 2, number -> {
                        page.bare().read(rows, number);
                        return null;
                    }));
                }
            }
            return new PageFigures(cases, start, megabytes, Files.size(folder.resolve("data").resolve("clinic.mv.db")) / 1_000_000, mapsASecond, measured, bare);
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
            }
        }
    }

    /** As on a morning on which somebody has worked for a while: every page in turn, so that it is translated and what it needs is at hand. */
    private static void warm(BenchClient client, List<Page> pages) throws Exception {
        long begun = System.nanoTime();
        for (int number = 0; System.nanoTime() - begun < TimeUnit.SECONDS.toNanos(SECONDS_OF_WARMING); number++) {
            for (Page page : pages) {
                page.over().ask(client, number);
            }
        }
    }

    private static String text(List<PageFigures> all) {
        StringBuilder text = new StringBuilder("""
                The packaged application as README starts it, on an H2 file with `WRITE_DELAY=0`, filled with invented cases (`measure.InventedClinic`: five
                visits, ten scores, three symptom reports each, seeded), summed up and compacted. Every page was opened in turn for 30 s before; one visitor, from the request to the whole answer, over a different open case with
                each request; the client runs on the same two processors. "Bare" is the SQL for the same rows over JDBC in the same kind of file, every value
                read; "frame" is a signed-in page that asks nothing of the cases (`/account/password`). A letter draft is the POST that makes it and the
                page it leads to is not in it; saving a visit is the POST alone, with its history, its line in the audit trail and the forced commit.
                Only latest visits whose note waits to be signed can be saved: a few at 10,000 cases, some fifty at 100,000, again and again. "Counted anew" is so only the first
                time a period is asked for; from 20,000 cases on its median is of figures kept from the warming, and the slowest hundredth tells what counting takes.

                """);
        for (PageFigures one : all) {
            double frame = one.pages().get(Page.FRAME).median();
            text.append(String.format(Locale.ROOT, "### %,d cases%n%nStart to the first page %.1f s, %d MB resident after all pages, database file %,d MB, %.0f Map pages a second by %d visitors at once.%n%n"
                    + "| | median, ms | 99 %% under, ms | bare SQL, ms | times bare + frame |%n| --- | --- | --- | --- | --- |%n", one.cases(), one.startSeconds(), one.residentMegabytes(),
                    one.fileMegabytes(), one.mapsASecond(), WORKERS));
            one.pages().forEach((name, timed) -> {
                double bare = one.bare().get(name).median();
                text.append(String.format(Locale.ROOT, "| %s | %.1f | %.1f | %s | %s |%n", name, timed.median(), timed.hundredth(), name.equals(Page.FRAME) ? "" : String.format(Locale.ROOT, "%.2f", bare),
                        name.equals(Page.FRAME) ? "" : String.format(Locale.ROOT, "%.1f", timed.median() / (bare + frame))));
            });
            text.append('\n');
        }
        if (all.size() > 1) {
            PageFigures before = all.get(all.size() - 2);
            PageFigures last = all.get(all.size() - 1);
            text.append(String.format(Locale.ROOT, "From %,d to %,d cases each page takes so many times as long: ", before.cases(), last.cases()));
            text.append(String.join(", ", last.pages().entrySet().stream().map(page -> String.format(Locale.ROOT, "%s %.2f", page.getKey(),
                    page.getValue().median() / before.pages().get(page.getKey()).median())).toList())).append(".\n");
        }
        return text.append("\nGoals: Map at most twice bare and frame together; type-ahead 99 % under 20 ms; from 10,000 to 100,000 no page more than 1.5 times as long; 500 Map pages a"
                + " second; start under 4 s and under 450 MB with 100,000 cases. The figures are kept in `docs/benchmarks-pages.json`.\n").toString();
    }

    private static long residentMegabytes(long pid) throws IOException {
        String line = Files.readAllLines(Path.of("/proc", String.valueOf(pid), "status")).stream().filter(l -> l.startsWith("VmRSS")).findFirst().orElseThrow();
        return Long.parseLong(line.replaceAll("\\D", "")) / 1024;
    }

    /** What one size gave: milliseconds by page, over HTTP and bare. */
    record PageFigures(int cases, double startSeconds, long residentMegabytes, long fileMegabytes, double mapsASecond, Map<String, Timed> pages, Map<String, Timed> bare) {
    }

    /** A page, how it is asked for and what the same rows are. */
    record Page(String name, int times, Asked over, Bare bare) {

        static final String FRAME = "Frame";

        interface Asked {
            long ask(BenchClient client, int number) throws Exception;
        }

        interface Bare {
            void read(BareRows rows, int number) throws SQLException;
        }

        static List<Page> all(LocalDate today, long[] ids, List<String> visits) {
            String period = "?to=" + today + "&from=";
            return List.of(
                    new Page(FRAME, 200, (client, number) -> client.get("/account/password"), (rows, number) -> { }),
                    new Page("Today, whole clinic", 60, (client, number) -> client.get("/?who=all"), (rows, number) -> rows.today()),
                    new Page("Patient type-ahead", 400, (client, number) -> client.fragment("/patients?q=" + BareRows.typed(number)), (rows, number) -> rows.typeAhead(number)),
                    new Page("Map", 200, (client, number) -> client.get("/cases/" + ids[number % ids.length]), BareRows::map),
                    new Page("Outcomes", 200, (client, number) -> client.get("/cases/" + ids[number % ids.length] + "/outcomes"), BareRows::outcomes),
                    new Page("Caseload, last year", 12, (client, number) -> client.get("/caseload"), (rows, number) -> rows.caseload(today.minusYears(1).plusDays(1))),
                    new Page("Caseload, every case", 12, (client, number) -> client.get("/caseload" + period + today.minusYears(6)), (rows, number) -> rows.caseload(today.minusYears(6))),
                    new Page("Caseload, every case, counted anew", 12, (client, number) -> client.get("/caseload" + period + today.minusYears(7).minusDays(number)),
                            (rows, number) -> rows.caseload(today.minusYears(6))),
                    new Page("Letter draft", 60, (client, number) -> client.post("/cases/" + ids[number % ids.length] + "/letters/new/routine_referral", "", Map.of("to", "other", "otherKind", "doctor", "otherName", "Dr Bench")), BareRows::map),
                    new Page("Saving a visit", 60, (client, number) -> client.post(visits.get(number % visits.size()), "", Map.of("nextReviewOn", Dates.shown(today.plusDays(14)))), BareRows::saveVisit));
        }
    }

    /** Median and the time under which 99 of 100 stay, in milliseconds. */
    record Timed(double median, double hundredth) {

        interface Work {
            Object run(int number) throws Exception;
        }

        static Timed of(int times, int warm, Work work) throws Exception {
            double[] taken = new double[times];
            for (int i = -warm; i < times; i++) {
                long began = System.nanoTime();
                Object own = work.run(i + warm);
                double millis = own instanceof Long nanos && nanos > 0 ? nanos / 1e6 : (System.nanoTime() - began) / 1e6;
                if (i >= 0) {
                    taken[i] = millis;
                }
            }
            Arrays.sort(taken);
            assertTrue(times >= 10);
            return new Timed(taken[times / 2], taken[Math.min(times - 1, (int) Math.ceil(times * 0.99) - 1)]);
        }
    }
}
