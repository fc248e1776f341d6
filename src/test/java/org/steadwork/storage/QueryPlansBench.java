package org.steadwork.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.caseload.SummedUp;
import org.steadwork.measure.InventedClinic;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/**
 * Asks PostgreSQL how it would answer every statement of each page that lists something, over many invented cases, and writes
 * {@code docs/query-plans.md}. {@code -Dsteadwork.cases=1000} takes another number of cases.
 */
@QuarkusTest
@TestProfile(QueryPlansBench.LikeAClinic.class)
class QueryPlansBench {

    private static final Path PAGE = Path.of("docs", "query-plans.md");
    private static final int CASES = Integer.getInteger("steadwork.cases", 20_000);
    /** Reading a smaller table whole is cheaper than any index. */
    private static final int LARGE_TABLE = 2_000;
    private static final int DEAREST = 3;
    private static final Pattern COST = Pattern.compile("cost=[0-9.]+\\.\\.([0-9.]+) rows=(\\d+)");
    private static final Pattern WHOLE = Pattern.compile("Seq Scan on (\\w+)");
    private static final Pattern LONG_LIST = Pattern.compile("^select (.{60}).*? from ", Pattern.DOTALL);
    private static final Pattern PLACE = Pattern.compile("\\?");

    /** Today is kept up to date as in a clinic, not looked through whole at each view as in other tests. */
    public static class LikeAClinic extends EmptyOnPostgres {

        @Override
        public Map<String, String> getConfigOverrides() {
            Map<String, String> settings = new LinkedHashMap<>(super.getConfigOverrides());
            settings.putAll(Map.of("steadwork.today.whole-up-to", "300", "steadwork.today.entries-a-page", "50"));
            return settings;
        }
    }

    private record Plan(String sql, List<String> lines) {

        double cost() {
            Matcher cost = COST.matcher(lines.get(0));
            assertTrue(cost.find(), lines.get(0));
            return Double.parseDouble(cost.group(1));
        }

        Set<String> readWhole() {
            Set<String> tables = new TreeSet<>();
            lines.forEach(line -> WHOLE.matcher(line).results().forEach(found -> tables.add(found.group(1))));
            return tables;
        }
    }

    @Inject
    DataSource dataSource;

    @Inject
    SummedUp summedUp;

    @Inject
    Statements statements;

    @Inject
    TestAccounts accounts;

    @Inject
    Clock clock;

    @ConfigProperty(name = "quarkus.datasource.jdbc.url")
    String url;

    @ConfigProperty(name = "quarkus.datasource.username")
    String user;

    @ConfigProperty(name = "quarkus.datasource.password")
    String password;

    @Test
    void everyListIsAsked() throws Exception {
        LocalDate today = LocalDate.now(clock);
        try (Connection db = dataSource.getConnection()) {
            new InventedClinic(db, 42, today).fill(CASES);
            db.createStatement().execute("analyze");
        }
        summedUp.everyCase();
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/"); // looks at the cases once, as every ten minutes
        Map<String, List<Plan>> plans = new LinkedHashMap<>();
        try (Connection db = asTyped()) {
            db.createStatement().execute("analyze");
            for (String path : paths(today)) {
                List<String> sent = statements.textsDuring(() -> {
                    lead.open(path);
                    assertEquals(200, lead.status(), path);
                });
                List<Plan> ofPage = new ArrayList<>();
                for (String sql : sent) {
                    ofPage.add(plan(db, sql));
                }
                ofPage.sort(Comparator.comparingDouble(Plan::cost).reversed());
                plans.put(path.replace(today.toString(), "…").replace(today.minusYears(1).toString(), "…"), ofPage);
            }
            Files.writeString(PAGE, text(plans, rows(db)));
        }
    }

    /** A connection that binds nothing: a statement with places is explained as it stands. */
    private Connection asTyped() throws SQLException {
        return DriverManager.getConnection(url + (url.contains("?") ? "&" : "?") + "preferQueryMode=simple", user, password);
    }

    private static List<String> paths(LocalDate today) {
        long[] ids = InventedClinic.ids(CASES);
        long oneCase = ids[ids.length / 2];
        return List.of("/", "/?who=all", "/team", "/patients", "/patients?q=alder", "/diary", "/diary/week", "/diary/missed", "/diary/waiting", "/diary/to-book", "/diary/reminders",
                "/meetings", "/employers", "/employers?q=har", "/letters", "/clinic/letters", "/clinic/accounts", "/clinic/audit", "/clinic/break-glass", "/clinic/retention",
                "/caseload?from=" + today.minusYears(1) + "&to=" + today, "/caseload/time?from=" + today.minusYears(1) + "&to=" + today, "/cases/" + oneCase,
                "/cases/" + oneCase + "/outcomes", "/cases/" + oneCase + "/visits");
    }

    private static Plan plan(Connection db, String sql) throws SQLException {
        int[] number = {0};
        String numbered = PLACE.matcher(sql).replaceAll(place -> Matcher.quoteReplacement("$" + ++number[0]));
        List<String> lines = new ArrayList<>();
        if (!sql.strip().toLowerCase(Locale.ROOT).matches("(select|update|insert|delete|with)\\b(?s:.*)")) {
            return new Plan(sql, List.of("(cost=0..0 rows=0) not planned"));
        }
        try (Statement statement = db.createStatement(); ResultSet rows = statement.executeQuery("explain (generic_plan) " + numbered)) {
            while (rows.next()) {
                lines.add(rows.getString(1));
            }
        }
        return new Plan(sql, lines);
    }

    private static Map<String, Long> rows(Connection db) throws SQLException {
        Map<String, Long> rows = new LinkedHashMap<>();
        try (ResultSet tables = db.createStatement().executeQuery("select relname, n_live_tup from pg_stat_user_tables order by n_live_tup desc, relname")) {
            while (tables.next()) {
                rows.put(tables.getString(1), tables.getLong(2));
            }
        }
        return rows;
    }

    private static String text(Map<String, List<Plan>> plans, Map<String, Long> rows) {
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT, """
                # How PostgreSQL answers the pages

                Written by `./mvnw -Pbench verify -Dit.test=QueryPlansBench`: %,d invented cases on PostgreSQL, `analyze`, then each page opened by the lead, and every
                different statement it sends explained (`explain (generic_plan)`: whatever the values are). "Cost" is the planner's own unit; a page read from disk
                is 4 of it, one from memory in order 1. Tables under %,d rows are left out of "reads whole".

                Large tables: %s.

                | page | statements | cost together | reads whole |
                | --- | --- | --- | --- |
                """, CASES, LARGE_TABLE, String.join(", ", rows.entrySet().stream().filter(table -> table.getValue() >= LARGE_TABLE)
                .map(table -> String.format(Locale.ROOT, "`%s` %,d", table.getKey(), table.getValue())).toList())));
        plans.forEach((path, ofPage) -> text.append(String.format(Locale.ROOT, "| `%s` | %d | %,.0f | %s |%n", path, ofPage.size(), ofPage.stream().mapToDouble(Plan::cost).sum(),
                String.join(", ", large(ofPage, rows)))));
        text.append("\n## The dearest statements of each page\n");
        plans.forEach((path, ofPage) -> {
            text.append("\n### `").append(path).append("`\n");
            ofPage.stream().limit(DEAREST).forEach(plan -> text.append("\n```\n").append(LONG_LIST.matcher(plan.sql()).replaceFirst("select $1… from ")).append("\n\n").append(String.join("\n", plan.lines())).append("\n```\n"));
        });
        return text.toString();
    }

    private static Set<String> large(List<Plan> plans, Map<String, Long> rows) {
        Set<String> tables = new TreeSet<>();
        plans.forEach(plan -> plan.readWhole().stream().filter(table -> rows.getOrDefault(table, 0L) >= LARGE_TABLE).map(table -> "`" + table + "`").forEach(tables::add));
        return tables;
    }
}
