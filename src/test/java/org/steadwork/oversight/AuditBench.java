package org.steadwork.oversight;

import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.arc.ClientProxy;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.account.ViewNotes;
import org.steadwork.measure.BenchmarkPage;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/**
 * Measures what noting a view in the audit trail costs a page: the same pages with the trail and with one that notes nothing, in turn, on a
 * database file that keeps every acknowledged commit. Not a test: run by {@code ./mvnw -Pbench verify -Dit.test=AuditBench}.
 */
@QuarkusTest
@TestProfile(OnDatabaseFile.class)
class AuditBench {

    private static final int ROUNDS = 12;
    private static final int PAGES_A_ROUND = 40;
    private static final double LIMIT = 0.10;
    private static final List<String> PAGES = List.of("symptoms", "outcomes", "programme", "work-place");

    /** Notes nothing, so that the rest of the page is measured alone. */
    static class Silent extends ViewNotes {

        @Override
        public void begin(String action, long patientId, long caseFileId) {
            // nothing
        }
    }

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    ViewNotes real;

    @Test
    void notingAViewCostsAtMostATenthOfThePage() throws IOException {
        long id = cases.open("Benedict", "Benchley-Audit");
        Visitor visitor = accounts.visitor(Role.LEAD);
        ViewNotes noting = ClientProxy.unwrap(real);
        round(visitor, id, 200);
        List<Double> with = new ArrayList<>();
        List<Double> without = new ArrayList<>();
        for (int i = 0; i < ROUNDS; i++) {
            QuarkusMock.installMockForInstance(new Silent(), real);
            without.addAll(round(visitor, id, PAGES_A_ROUND));
            QuarkusMock.installMockForInstance(noting, real);
            with.addAll(round(visitor, id, PAGES_A_ROUND));
        }
        double noted = median(with);
        double silent = median(without);
        double share = (noted - silent) / silent;
        BenchmarkPage.put("Audit trail", String.format(Locale.ROOT, """
                Pages of a case (%s) over HTTP on an H2 file with `WRITE_DELAY=0`, %d each way, in turns of %d with the trail and with one that
                notes nothing; medians. The note is stored
                beside the making of the page, which is sent when both are done. The sealer runs beside both.

                | | milliseconds a page |
                | --- | --- |
                | With the note of the view | %.2f |
                | Without (floor) | %.2f |
                | Share | %.1f %% |

                Limit: %.0f %%.""", String.join(", ", PAGES), ROUNDS * PAGES_A_ROUND, PAGES_A_ROUND, noted, silent, share * 100, LIMIT * 100));
        assertTrue(share <= LIMIT, "the note costs " + share * 100 + " %");
    }

    private static List<Double> round(Visitor visitor, long id, int pages) {
        List<Double> millis = new ArrayList<>();
        for (int i = 0; i < pages; i++) {
            long began = System.nanoTime();
            visitor.open("/cases/" + id + "/" + PAGES.get(i % PAGES.size()));
            millis.add((System.nanoTime() - began) / 1e6);
            assertTrue(visitor.status() == 200, "the page opens");
        }
        return millis;
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }
}
