package org.steadwork.worklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Map;
import java.util.stream.Collectors;
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
        Document clinician = accounts.visitor(Role.CLINICIAN).open("/?visits=all");
        assertTrue(clinician.select("section[aria-labelledby=visits]").text().contains("Neck ache · Review, visit 2"));
        Document desk = accounts.visitor(Role.ASSISTANT).open("/?visits=all");
        assertTrue(desk.text().contains("Ursula Vickery-Wren " + fileNumber(id)), desk.text());
        assertFalse(desk.text().contains("Neck ache"), "a complaint is clinical");
        assertTrue(desk.select(".worklist__entry").isEmpty());
    }

    @Test
    void visitsAreOfWhoseCasesAreAskedForAndTheFirstOfMany() {
        IntStream.rangeClosed(0, DayVisits.FIRST).mapToObj(i -> cases.open("Visited " + i, "Zzotheringham")).forEach(id -> QuarkusTransaction.requiringNew()
                .run(() -> visits.add(files.withPeople(id).orElseThrow(), LocalDate.now(), VisitKind.FOLLOW_UP, Attendance.PLANNED)));
        String whose = "/?who=" + accounts.of(Role.CLINICIAN).id();
        Element first = accounts.visitor(Role.CLINICIAN).open(whose).selectFirst("section[aria-labelledby=visits]");
        assertEquals(DayVisits.FIRST, first.select("tbody tr").size());
        assertTrue(first.text().contains("The first " + DayVisits.FIRST + " are shown."), first.text());
        Element all = accounts.visitor(Role.CLINICIAN).open(first.selectFirst("a[href^=/?visits=]").attr("href")).selectFirst("section[aria-labelledby=visits]");
        assertTrue(all.select("tbody tr").size() > DayVisits.FIRST);
        assertTrue(all.text().contains("Visited " + DayVisits.FIRST + " Zzotheringham"));
        assertFalse(all.text().contains("are shown."));
        Element others = accounts.visitor(accounts.fresh(Role.CLINICIAN)).open("/?who=mine").selectFirst("section[aria-labelledby=visits]");
        assertEquals("No visit today.", others.select(".empty__lead").text());
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

    /** A list of numbers in a query is as long as there are entries to fetch; it stays one query. */
    private Map<String, Long> queries() {
        return statements.countsDuring(() -> QuarkusTransaction.requiringNew().run(() -> worklists.on(LocalDate.now(), new Filter(Whose.everybody(), "", null, 1))))
                .entrySet().stream().collect(Collectors.toMap(query -> query.getKey().replaceAll("in \\([?,]+\\)", "in (?)"), Map.Entry::getValue, Long::sum));
    }

    private String fileNumber(long id) {
        return QuarkusTransaction.requiringNew().call(() -> files.withPeople(id).orElseThrow().patient().fileNumber());
    }
}
