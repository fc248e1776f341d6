package org.steadwork.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.steadwork.journey.PackagedApplication;
import org.steadwork.measure.BenchmarkPage;
import org.steadwork.web.Visitor;

/**
 * Takes in many patients through the pages of the packaged application and compares it with the bare batched insert of the very rows it
 * stored, copied into a fresh database of the same kind. Not a test: run by {@code ./mvnw -Pbench verify -Dit.test=ImportBench}.
 */
class ImportBench {

    private static final int PATIENTS = Integer.getInteger("steadwork.patients", 100_000);
    private static final String OPTIONS = ";WRITE_DELAY=0;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";
    private static final List<String> TABLES = List.of("employer", "revision", "patient", "patient_word", "patient_history");
    private static final Pattern FIRST_RUN = Pattern.compile("/first-run\\?key=[\\w-]+");
    private static final int BATCH = 1000;
    private static final int EMPLOYERS = 200;

    @Test
    void manyPatientsAgainstTheBareInsert() throws IOException, SQLException {
        Path folder = Files.createTempDirectory("steadwork-import");
        try {
            double[] taken = takeIn(folder);
            long[] rows = new long[1];
            double floor = bare(folder, rows);
            BenchmarkPage.put("Taking in patients", String.format(Locale.ROOT, """
                    %,d patients as one CSV file (%d employers) through the pages of the packaged application on H2: upload and dry run, then storing,
                    each timed from the request to the page that says it is done. Storing checks the file once more and writes the patients, the parts
                    of names that find them and the history. The floor is the bare batched JDBC insert (%d a batch, one transaction, the commit
                    timed too) of exactly the %,d rows that were stored, into a fresh database of the same kind and options.

                    | | seconds |
                    | --- | --- |
                    | Upload and dry run | %.1f |
                    | Storing, the second check with it | %.1f |
                    | Floor: bare insert of the same rows | %.1f |

                    Storing took %.2f times the floor (wanted: at most 2), with the dry run %.2f times.""", PATIENTS, EMPLOYERS, BATCH, rows[0], taken[0], taken[1], floor,
                    taken[1] / floor, (taken[0] + taken[1]) / floor));
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
            }
        }
    }

    private static String csv() {
        String[] given = {"Ada", "Bram", "Cora", "Dario", "Edda", "Fintan", "Greta", "Hamid", "Ilse", "Jonas"};
        String[] family = {"Quillfeather", "Oduya", "Penhallow", "Tverdal", "Lindqvist", "Marchbank", "Okoro", "Zielinski", "Abara", "Fennick"};
        StringBuilder text = new StringBuilder("given_name,family_name,birth_date,sex,employer,job,phone\n");
        for (int i = 0; i < PATIENTS; i++) {
            int day = i * 7919 % 18_000;
            text.append(given[i % 10]).append(',').append(family[i / 10 % 10]).append('-').append(Integer.toString(i, 36)).append(',').append(LocalDate.of(1955, 1, 1).plusDays(day))
                    .append(",female,Employer ").append(i % EMPLOYERS).append(",Planner,01632 ").append(960_000 + i % 1000).append('\n');
        }
        return text.toString();
    }

    private static double[] takeIn(Path folder) {
        try (PackagedApplication application = PackagedApplication.startKeeping(folder, Map.of())) {
            Visitor lead = new Visitor(URI.create(application.address().toString()));
            Matcher link = FIRST_RUN.matcher(application.log());
            assertTrue(link.find());
            lead.open(link.group());
            lead.submit(lead.page().select("main form").attr("action"), Map.of("userName", "bench", "fullName", "Bench Lead", "displayName", "B. Lead", "password", "a long bench password",
                    "passwordAgain", "a long bench password"));
            byte[] file = csv().getBytes(StandardCharsets.UTF_8);
            lead.open("/clinic/import");
            long began = System.nanoTime();
            lead.upload("/clinic/import", Map.of("kind", "patients"), "file", "patients.csv", file);
            assertEquals(200, lead.status(), lead.page().text());
            String job = lead.at().getPath();
            awaitRest(lead, job);
            double checked = (System.nanoTime() - began) / 1e9;
            assertTrue(lead.page().text().contains("nothing is wrong"), lead.page().text());
            began = System.nanoTime();
            lead.submit(job + "/store", Map.of("withDoubles", "yes"));
            awaitRest(lead, job);
            double stored = (System.nanoTime() - began) / 1e9;
            assertTrue(lead.page().text().contains(PATIENTS + " of " + PATIENTS + " rows were stored"), lead.page().text());
            return new double[] {checked, stored};
        }
    }

    private static void awaitRest(Visitor lead, String job) {
        while (!lead.page().select("meta[http-equiv=refresh]").isEmpty()) {
            try {
                Thread.sleep(50);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            lead.open(job);
        }
    }

    /** Copies the stored rows into memory first, then times nothing but their insert. */
    private static double bare(Path folder, long[] rows) throws SQLException {
        String fresh = "jdbc:h2:file:" + folder.resolve("floor") + OPTIONS;
        Flyway.configure().dataSource(fresh, "sa", "").locations("classpath:db/migration").load().migrate();
        List<List<Object[]>> all = new ArrayList<>();
        List<String> inserts = new ArrayList<>();
        try (Connection from = DriverManager.getConnection("jdbc:h2:file:" + folder.resolve("clinic") + OPTIONS); Statement statement = from.createStatement()) {
            for (String table : TABLES) {
                try (ResultSet read = statement.executeQuery("select * from " + table)) {
                    ResultSetMetaData columns = read.getMetaData();
                    List<String> names = new ArrayList<>();
                    for (int i = 1; i <= columns.getColumnCount(); i++) {
                        names.add(columns.getColumnName(i));
                    }
                    inserts.add("insert into " + table + " (" + String.join(", ", names) + ") values (?" + ", ?".repeat(names.size() - 1) + ")");
                    List<Object[]> stored = new ArrayList<>();
                    while (read.next()) {
                        Object[] row = new Object[names.size()];
                        for (int i = 0; i < row.length; i++) {
                            row[i] = read.getObject(i + 1);
                        }
                        stored.add(row);
                    }
                    rows[0] += stored.size();
                    all.add(stored);
                }
            }
        }
        try (Connection to = DriverManager.getConnection(fresh)) {
            to.setAutoCommit(false);
            long began = System.nanoTime();
            for (int table = 0; table < all.size(); table++) {
                insert(to, inserts.get(table), all.get(table));
            }
            to.commit();
            return (System.nanoTime() - began) / 1e9;
        }
    }

    private static void insert(Connection to, String sql, List<Object[]> rows) throws SQLException {
        try (PreparedStatement insert = to.prepareStatement(sql)) {
            int pending = 0;
            for (Object[] row : rows) {
                for (int i = 0; i < row.length; i++) {
                    insert.setObject(i + 1, row[i]);
                }
                insert.addBatch();
                if (++pending == BATCH) {
                    insert.executeBatch();
                    pending = 0;
                }
            }
            insert.executeBatch();
        }
    }
}
