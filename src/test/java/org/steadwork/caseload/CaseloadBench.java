package org.steadwork.caseload;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.measure.BenchmarkPage;
import org.steadwork.measure.InventedClinic;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/**
 * Measures the pages of the caseload over invented cases in a database file, and beside them the bare reading of the same rows.
 * {@code -Dsteadwork.cases=10000} takes another number of cases.
 */
@QuarkusTest
@TestProfile(CaseloadOnDisk.class)
class CaseloadBench {

    private static final int CASES = Integer.getInteger("steadwork.cases", 100_000);
    private static final int WARM = 4;
    private static final int ROUNDS = 9;
    private static final double LIMIT_SECONDS = 1;

    @Inject
    DataSource dataSource;

    @Inject
    OutcomeStart start;

    @Inject
    CaseOutcomes outcomes;

    @Inject
    TestAccounts accounts;

    @Inject
    Clock clock;

    @Test
    void thePagesStayUnderTheLimit() throws Exception {
        LocalDate today = LocalDate.now(clock);
        long began = System.nanoTime();
        Map<String, Long> rows;
        try (Connection db = dataSource.getConnection()) {
            rows = new InventedClinic(db, 42, today).withoutSearch().fill(CASES);
        }
        double filled = seconds(began);
        began = System.nanoTime();
        start.rebuild();
        double summedUp = seconds(began);
        String chosen = "?from=" + today.minusYears(6) + "&to=" + today;
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        double bare = median(() -> bare("select " + OutcomeRows.COLUMNS + " from case_outcome where opened_on >= '" + today.minusYears(6) + "' and opened_on <= '" + today
                + "' order by case_file_id"));
        double scores = median(() -> bare("select case_file_id, instrument, scored_on, score_value from score order by case_file_id, scored_on, id"));
        StringBuilder table = new StringBuilder();
        List<Double> pages = new ArrayList<>();
        for (CaseloadTab tab : CaseloadTab.values()) {
            double page = median(() -> {
                visitor.open(tab.path() + chosen);
                assertTrue(visitor.status() == 200 && visitor.page().select(".sec").size() > 0, visitor.page().title());
                return 0;
            });
            pages.add(page);
            table.append(String.format(Locale.ROOT, "| %s | %.2f | %.1f |%n", tab.label(), page, page / bare));
        }
        double one = median(() -> outcomes.recomputed(1_000_000 + CASES / 2, 1_000_000 + CASES / 2));
        boolean quick = ManagementFactory.getRuntimeMXBean().getInputArguments().toString().contains("TieredStopAtLevel=1");
        BenchmarkPage.put("Caseload", """
                %s invented cases over five years with %s scores, %s visits and %s findings in an H2 database file (`measure.InventedClinic`, stored in
                %.0f s, summed up anew in %.0f s, %.0f MB). Each page is asked for over HTTP with all cases chosen and taken whole, parsed; median of %d after %d
                warming up, one process%s. "Bare" is the same query over plain JDBC with every value read and nothing kept: %.2f s for the %s rows of
                `case_outcome`. Reading the scores themselves instead, in order and without counting anything, takes %.1f s.

                | page | seconds | times bare |
                | --- | --- | --- |
                %s
                Summing up one case after a change takes %.1f ms. Limit: %.0f s a page.""".formatted(grouped(CASES), grouped(rows.get("score")), grouped(rows.get("visit")),
                grouped(rows.get("workplace_finding")), filled, summedUp, megabytes(), ROUNDS, WARM, quick ? " with the compiler the product is started with" : "", bare,
                grouped(CASES), scores, table, one * 1000, LIMIT_SECONDS));
        assertTrue(pages.stream().allMatch(page -> page < LIMIT_SECONDS), pages.toString());
    }

    private static double megabytes() throws IOException {
        return Files.size(CaseloadOnDisk.FOLDER.resolve("clinic.mv.db")) / 1e6;
    }

    private static String grouped(long number) {
        return String.format(Locale.ROOT, "%,d", number);
    }

    private long bare(String sql) throws SQLException {
        long read = 0;
        try (Connection db = dataSource.getConnection(); PreparedStatement statement = db.prepareStatement(sql)) {
            statement.setFetchSize(5000);
            try (ResultSet row = statement.executeQuery()) {
                int columns = row.getMetaData().getColumnCount();
                while (row.next()) {
                    for (int i = 1; i <= columns; i++) {
                        Object value = row.getObject(i);
                        read += value == null ? 0 : 1;
                    }
                }
            }
        }
        return read;
    }

    private static double median(Callable<?> work) throws Exception {
        double[] taken = new double[ROUNDS];
        for (int i = -WARM; i < ROUNDS; i++) {
            long began = System.nanoTime();
            work.call();
            if (i >= 0) {
                taken[i] = seconds(began);
            }
        }
        Arrays.sort(taken);
        return taken[ROUNDS / 2];
    }

    private static double seconds(long began) {
        return (System.nanoTime() - began) / 1e9;
    }
}
