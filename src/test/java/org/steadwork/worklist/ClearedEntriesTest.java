package org.steadwork.worklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** What left Today goes after the days of the setting, 365 as shipped; what was put off, and what stands, stays. */
@QuarkusTest
class ClearedEntriesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);

    @Inject
    ClearedEntries cleared;

    @Inject
    Refresh refresh;

    @Inject
    RuleCases cases;

    @Inject
    TestAccounts accounts;

    @Inject
    EntityManager db;

    private List<Long> entries(long id) {
        return db.createQuery("select e.id from WorklistEntry e where e.caseFile.id = ?1 order by e.rule", Long.class).setParameter(1, id).getResultList();
    }

    private void left(long entry, LocalDate day) {
        cases.sql("update worklist_entry set cleared_on = date '" + day + "', cleared_at = first_seen_at where id = " + entry);
    }

    @Test
    void onlyWhatLeftLongAgoAndWasNeverPutOffGoes() {
        long id = cases.open("Cleared-Long-Ago");
        cases.addVisit(id, 2, LocalDate.now().minusDays(3), "MISSED");
        refresh.runWhole(LocalDate.now());
        List<Long> all = entries(id);
        assertTrue(all.size() >= 3, all.toString());
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        long putOff = db.createQuery("select e.id from WorklistEntry e where e.caseFile.id = ?1 and e.rule = 'review_none'", Long.class).setParameter(1, id).getSingleResult();
        clinician.open("/today/entries/" + putOff + "/snooze");
        clinician.submit("/today/entries/" + putOff + "/snooze", Map.of("reason", "Back from leave on Monday"));
        assertEquals(200, clinician.status(), clinician.page().text());
        List<Long> others = all.stream().filter(entry -> entry != putOff).toList();
        left(putOff, DAY.minusDays(400));
        left(others.get(0), DAY.minusDays(366));
        left(others.get(1), DAY.minusDays(365));
        assertTrue(cleared.remove(DAY) >= 1);
        List<Long> kept = entries(id);
        assertTrue(!kept.contains(others.get(0)), "it left more than the days of the setting ago");
        assertEquals(all.size() - 1, kept.size(), "one on its last day, one put off and those that stand are kept");
    }
}
