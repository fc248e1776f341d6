package org.steadwork.worklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Map;
import java.util.stream.IntStream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.Visits;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;

@QuarkusTest
class TodayPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    CaseFiles files;

    @Inject
    Visits visits;

    @Inject
    Worklists worklists;

    @Inject
    Statements statements;

    @Test
    void anEntryNamesTheComplaintAndTheFileNumberBesideThePatient() {
        long id = cases.open("Tabitha", "Underhay-Vance");
        Document page = accounts.visitor(Role.CLINICIAN).open("/");
        Element entry = page.select(".worklist__entry:has(a[href=/cases/" + id + "])").first();
        assertEquals("Tabitha Underhay-Vance Neck ache, " + fileNumber(id), entry.select(".worklist__who").text());
        assertFalse(entry.select(".worklist__why").text().isBlank());
    }

    @Test
    void theDeskSeesWhoComesAndNotWhatFor() {
        long id = cases.open("Ursula", "Vickery-Wren");
        QuarkusTransaction.requiringNew().run(() -> visits.add(files.withPeople(id).orElseThrow(), LocalDate.now(), VisitKind.FOLLOW_UP, Attendance.PLANNED));
        Document clinician = accounts.visitor(Role.CLINICIAN).open("/");
        assertTrue(clinician.select("section[aria-labelledby=visits]").text().contains("Neck ache · Review, visit 2"));
        Document desk = accounts.visitor(Role.ASSISTANT).open("/");
        assertTrue(desk.text().contains("Ursula Vickery-Wren " + fileNumber(id)), desk.text());
        assertFalse(desk.text().contains("Neck ache"), "a complaint is clinical");
        assertTrue(desk.select(".worklist__entry").isEmpty());
    }

    @Test
    void theNumberOfQueriesDoesNotGrowWithTheWorklist() {
        cases.open("Viola", "Wardle-Yeo");
        queries(); // writes what is new, in as many statements as there are rows
        Map<String, Long> few = queries();
        // more than are fetched in one go, so that a fetch for each would show
        IntStream.range(0, 60).forEach(i -> cases.open("Yseult " + i, "Wardle-Yeo"));
        queries();
        assertEquals(few, queries());
    }

    private Map<String, Long> queries() {
        return statements.countsDuring(() -> QuarkusTransaction.requiringNew().run(() -> worklists.on(LocalDate.now(), new Filter(new Whose(null, Whose.ALL), "", null, 1))));
    }

    private String fileNumber(long id) {
        return QuarkusTransaction.requiringNew().call(() -> files.withPeople(id).orElseThrow().patient().fileNumber());
    }
}
