package org.steadwork.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.people.Patient;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class CaseFilePagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Test
    void aReviewBeforeTheOpeningIsRefusedAtTheField() {
        long id = cases.open("Nerys", "Holloway-Finch");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/cases/" + id + "/edit");
        visitor.submit("/cases/" + id + "/edit", Map.of("nextReviewOn", "3 Mar 2026", "complaint", "Neck ache, changed"));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#nextReviewOn-error").text().contains("4 Mar 2026"));
        assertEquals("Neck ache, changed", visitor.page().select("#complaint").val());
    }

    @Test
    void aCaseClosesWithAReasonAndOpensAgain() {
        long id = cases.open("Idris", "Quennell");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String close = "/cases/" + id + "/close";
        // nobody was seen, so that no red-flag screen is wanted before the discharge
        visitor.open("/cases/" + id + "/attendance");
        visitor.submit("/cases/" + id + "/attendance", Map.of("number", "1", "attendance", "missed"));
        visitor.open(close);
        visitor.submit(close, Map.of("closedOn", "10 Apr 2026"));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#reason-error").text().contains("missing"));
        visitor.submit(close, Map.of("reason", "goals_met"));
        visitor.open(close);
        assertTrue(visitor.page().text().contains("Goals met"));
        visitor.submit(close + "/reopen", Map.of());
        visitor.open(close);
        assertTrue(visitor.page().select("#closedOn").size() == 1);
    }

    @Test
    void aCaseIsNotOpenedBeforeBirthNorAComplaintAfterOpening() {
        Patient patient = new Patient("T-1", "A", "B", LocalDate.of(2000, 1, 1), LocalDate.of(2026, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new CaseFile(patient, null, "x", null, LocalDate.of(1999, 12, 31)));
        assertThrows(IllegalArgumentException.class,
                () -> new CaseFile(patient, null, "x", LocalDate.of(2026, 2, 2), LocalDate.of(2026, 2, 1)));
        CaseFile file = new CaseFile(patient, null, "x", LocalDate.of(2026, 2, 1), LocalDate.of(2026, 2, 1));
        assertThrows(IllegalArgumentException.class, () -> file.close(LocalDate.of(2026, 1, 31), CloseReason.GOALS_MET, null));
        assertThrows(IllegalArgumentException.class, () -> new Visit(file, 1, LocalDate.of(2026, 1, 31), VisitKind.INITIAL, Attendance.ATTENDED));
    }
}
