package org.steadwork.caseload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.CloseReason;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.Score;
import org.steadwork.outcome.Scores;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** The row of a case is never older than the case, on every database. */
abstract class CaseOutcomesContract {

    private static final LocalDate DAY = TestCases.OPENED;

    @Inject
    CaseOutcomes outcomes;

    @Inject
    OutcomeStart start;

    @Inject
    TestCases cases;

    @Inject
    TestAccounts accounts;

    @Inject
    CaseFiles files;

    @Inject
    Scores scores;

    @Inject
    Instruments instruments;

    @Inject
    EntityManager db;

    @Inject
    SeededClinic seeded;

    private CaseOutcome row(long id) {
        List<CaseOutcome> rows = outcomes.stored(id, id);
        assertEquals(1, rows.size());
        assertEquals(outcomes.recomputed(id, id), rows, "the row and what it would be if it were summed up now");
        return rows.get(0);
    }

    @Test
    void everySaveThroughAPageReachesTheRow() {
        long id = cases.open("Olwen", "Outcombe-" + System.nanoTime());
        String path = "/cases/" + id;
        CaseOutcome opened = row(id);
        assertEquals(DAY, opened.openedOn());
        assertEquals(1, opened.attended());
        assertNull(opened.painFirst());
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        send(visitor, path + "/symptoms/new", Map.of("reportedOn", "4 Mar 2026", "worst-neck", "7"), Map.of("zone", List.of("neck")));
        assertEquals(7, row(id).painFirst());
        assertEquals(BodyRegion.NECK, row(id).region());
        send(visitor, path + "/outcomes/nprs_worst", Map.of("on", "4 Mar 2026", "i1", "6"));
        assertEquals(6, row(id).painFirst(), "a score of the day goes before the report");
        send(visitor, path + "/outcomes/ndi", Map.of("on", "4 Mar 2026", "i1", "2", "i2", "3", "i3", "2", "i4", "2", "i5", "2", "i6", "2", "i7", "2", "i8", "2"));
        assertEquals("ndi", row(id).measure());
        send(visitor, path + "/symptoms/new", Map.of("reportedOn", "18 Mar 2026", "worst-neck", "3"), Map.of("zone", List.of("neck")));
        assertEquals(3, row(id).painLast());
        send(visitor, path + "/edit", Map.of("referredOn", "27 Feb 2026"));
        assertEquals(LocalDate.of(2026, 2, 27), row(id).referredOn());
        send(visitor, path + "/work-place/edit", Map.of("assessedOn", "4 Mar 2026", "PH-1", "does_not_fit"));
        assertEquals("PH-1", row(id).findings());
        assertTrue(row(id).assessed());
        send(visitor, path + "/visits", Map.of("visitedOn", "25 Mar 2026", "kind", "follow_up"));
        assertEquals(CaseOutcome.Screening.NONE, row(id).screen());
        QuarkusTransaction.requiringNew().run(() -> files.findById(id).close(LocalDate.of(2026, 4, 1), CloseReason.GOALS_MET, null));
        assertEquals(CloseReason.GOALS_MET, row(id).closeReason());
    }

    private static void send(Visitor visitor, String path, Map<String, String> changes) {
        send(visitor, path, changes, Map.of());
    }

    private static void send(Visitor visitor, String path, Map<String, String> changes, Map<String, List<String>> several) {
        visitor.open(path);
        visitor.submit(path, changes, several);
        assertEquals(200, visitor.status(), () -> path + ": " + visitor.page().text());
    }

    @Test
    void whatIsRolledBackLeavesTheRowAlone() {
        long id = cases.open("Rolf", "Backmere-" + System.nanoTime());
        CaseOutcome before = row(id);
        assertThrows(IllegalStateException.class, () -> QuarkusTransaction.requiringNew().run(() -> {
            score(id, DAY, 8);
            db.flush();
            throw new IllegalStateException("broken off");
        }));
        assertEquals(before, row(id));
    }

    @Test
    void severalSavesInOneTransactionAreAllInTheRow() {
        long id = cases.open("Sven", "Several-" + System.nanoTime());
        QuarkusTransaction.requiringNew().run(() -> {
            score(id, DAY, 8);
            db.flush();
            score(id, DAY.plusDays(7), 2);
        });
        assertEquals(8, row(id).painFirst());
        assertEquals(2, row(id).painLast());
    }

    /** Each of eight writers sees only its own score until it commits; whoever comes last must see all. */
    @Test
    void ofManyAtOnceNoneIsMissed() {
        for (int round = 0; round < 5; round++) {
            long id = cases.open("Twyla", "Atonce-" + System.nanoTime());
            List<CompletableFuture<Void>> writers = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                int place = i;
                writers.add(CompletableFuture.runAsync(() -> QuarkusTransaction.requiringNew().run(() -> score(id, DAY.plusDays(place), place + 1))));
            }
            CompletableFuture.allOf(writers.toArray(CompletableFuture[]::new)).join();
            assertEquals(1, row(id).painFirst());
            assertEquals(8, row(id).painLast());
        }
    }

    private void score(long caseId, LocalDate day, int pain) {
        CaseFile file = files.findById(caseId);
        Score score = new Score(file, instruments.find("nprs_worst").orElseThrow(), day);
        score.record(instruments.find("nprs_worst").orElseThrow(), List.of(pain), "T. Clinician", Instant.EPOCH);
        scores.persist(score);
    }

    @Test
    void aPatientsNewEmployerReachesTheRowsOfAllCases() {
        long id = cases.open("Emrys", "Employ-" + System.nanoTime());
        Visitor visitor = accounts.visitor(Role.LEAD);
        visitor.open("/cases/" + id);
        String patient = visitor.page().select("a[href^=/patients/]").stream().map(link -> link.attr("href")).filter(href -> href.matches("/patients/\\d+")).findFirst().orElseThrow();
        assertNull(row(id).employerId());
        send(visitor, patient + "/edit", Map.of("employer", "Rowmere Works " + id));
        assertTrue(row(id).employerId() > 0);
    }

    @Test
    void whatWasStoredPastHibernateIsSummedUpAnew() throws Exception {
        seeded.fill();
        List<CaseOutcome> rows = outcomes.stored(SeededClinic.FIRST, SeededClinic.LAST);
        assertEquals(SeededClinic.CASES, rows.size());
        assertEquals(outcomes.recomputed(SeededClinic.FIRST, SeededClinic.LAST), rows);
        assertTrue(rows.stream().filter(CaseOutcome::painPair).count() > 200);
        assertTrue(rows.stream().filter(row -> row.linkedFirst() != null).count() > 20);
        assertNotEquals(List.of(), rows.stream().map(CaseOutcome::offOn).filter(day -> day != null).toList());
        assertTrue(outcomes.complete());
        // a row by another rule and a row that is missing are found and made at the next start, each by itself too
        for (String change : List.of("delete from case_outcome where case_file_id = ", "update case_outcome set rule = -2147483648, pain_first = 9 where case_file_id = ",
                "update case_outcome set rule = 2147483647, pain_first = 9 where case_file_id = ")) {
            QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery(change + (SeededClinic.FIRST + 1)).executeUpdate());
            assertFalse(outcomes.complete(), change);
            start.start(null);
            assertEquals(rows, outcomes.stored(SeededClinic.FIRST, SeededClinic.LAST));
            assertTrue(outcomes.complete(), change);
        }
    }
}
