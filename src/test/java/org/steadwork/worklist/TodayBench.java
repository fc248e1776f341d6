package org.steadwork.worklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.Role;
import org.steadwork.account.Sessions;
import org.steadwork.casefile.CaseScope;
import org.steadwork.measure.BenchmarkPage;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;

/** Measures Today over 1,000 and over 10,000 open cases, beside the floor: one count over the open cases. */
@QuarkusTest
class TodayBench {

    private static final int TIMES = 31;
    private static final double LIMIT_MILLISECONDS = 200;

    @Inject
    ManyCases many;

    @Inject
    Refresh refresh;

    @Inject
    Asking asking;

    @Inject
    TestAccounts accounts;

    @Inject
    Sessions sessions;

    @Inject
    AuditTrail audit;

    @Inject
    Statements statements;

    @Inject
    EntityManager db;

    @TestHTTPResource("/")
    URI clinic;

    private final HttpClient client = HttpClient.newHttpClient();
    private final LocalDate today = LocalDate.now();

    @FunctionalInterface
    private interface Work {
        void run() throws Exception;
    }

    @Test
    void todayOverManyOpenCases() throws Exception {
        String cookie = "steadwork-session=" + sessions.begin(accounts.of(Role.LEAD));
        List<Long> clinicians = List.of(accounts.of(Role.LEAD).id(), accounts.of(Role.CLINICIAN).id());
        StringBuilder table = new StringBuilder("| | 1,000 open cases, ms | 10,000 open cases, ms |\n| --- | --- | --- |\n");
        many.add(1000, clinicians, today);
        double[] small = figures(cookie);
        many.add(9000, clinicians, today);
        double[] large = figures(cookie);
        List<String> names = List.of("All cases looked at for the first time, list written", "All cases looked at again, nothing new", "Today, whole clinic, first page",
                "Today, after something was done in one case", "Today, mine", "Today, one reason, last page", "Team", "What stands in one case (the map’s next step)",
                "Floor: counting the open cases");
        for (int i = 0; i < names.size(); i++) {
            table.append("| ").append(names.get(i)).append(" | ").append(shown(small[i])).append(" | ").append(shown(large[i])).append(" |\n");
        }
        long entries = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select count(e) from WorklistEntry e where e.clearedOn is null", Long.class).getSingleResult());
        long all = statements.during(() -> QuarkusTransaction.requiringNew().timeout(300).run(() -> asking.entries(today, CaseScope.all())));
        long page = statements.during(() -> get(cookie, "/?who=all"));
        BenchmarkPage.put("Today", """
                Invented open cases, the same for the same seed, each with four visits, three symptom reports, four scores, a red-flag screen, two exercises
                with four reports each and two findings, on H2 in memory; at 10,000 cases %,d entries stand on the list. Warm; the median of %d pages, from
                the request to the whole page, 50 entries each. Up to 1,000 open cases all are looked at with every page; beyond, those in
                which something was done. All cases are asked about in %d statements, however many they are; a page of the large clinic takes %d.

                %s""".formatted(entries, TIMES, all, page, table));
        for (int i = 2; i <= 5; i++) {
            assertTrue(large[i] < LIMIT_MILLISECONDS, names.get(i) + " took " + large[i] + " ms");
        }
    }

    private double[] figures(String cookie) throws Exception {
        double first = once(() -> refresh.runWhole(today));
        double again = median(5, () -> refresh.runWhole(today));
        long one = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select max(c.id) from CaseFile c", Long.class).getSingleResult());
        return new double[] {first, again, median(TIMES, () -> get(cookie, "/?who=all")), median(TIMES, () -> {
            QuarkusTransaction.requiringNew().run(() -> audit.record("changed case details", null, one, null));
            get(cookie, "/?who=all");
        }), median(TIMES, () -> get(cookie, "/?who=mine")), median(TIMES, () -> get(cookie, "/?who=all&rule=review_overdue&page=9999")), median(TIMES, () -> get(cookie, "/team")),
            median(TIMES, () -> QuarkusTransaction.requiringNew().run(() -> asking.entries(today, CaseScope.one(one)))),
            median(TIMES, () -> QuarkusTransaction.requiringNew().run(() -> db.createQuery("select count(c) from CaseFile c where c.closedOn is null", Long.class).getSingleResult()))};
    }

    private void get(String cookie, String path) {
        try {
            HttpResponse<String> answer = client.send(HttpRequest.newBuilder(clinic.resolve(path)).header("Cookie", cookie).header("Accept", "text/html").build(),
                    HttpResponse.BodyHandlers.ofString());
            assertEquals(200, answer.statusCode());
            assertTrue(!answer.body().contains("may be out of date"));
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static double median(int times, Work work) throws Exception {
        for (int i = 0; i < times / 3; i++) {
            work.run();
        }
        double[] measured = new double[times];
        for (int i = 0; i < times; i++) {
            measured[i] = once(work);
        }
        Arrays.sort(measured);
        return measured[times / 2];
    }

    private static double once(Work work) throws Exception {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e6;
    }

    private static String shown(double milliseconds) {
        return String.format(Locale.ENGLISH, milliseconds < 10 ? "%,.1f" : "%,.0f", milliseconds);
    }
}
