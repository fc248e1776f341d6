package org.steadwork.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.body.SymptomKind;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.RegionReading;
import org.steadwork.casefile.SymptomPattern;
import org.steadwork.casefile.SymptomReport;
import org.steadwork.casefile.SymptomReports;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class PhysicalPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    CaseFiles files;

    @Inject
    SymptomReports reports;

    // A woman of 37: mean norm of the right hand at 35 to 39 is 74.1 lb (SD 10.8), Mathiowetz et al. 1985; 30 kg is 66.14 lb, so 89.3 % and z -0.74
    @Test
    void threeTrialsMakeAMeanBesideTheNorm() {
        long id = cases.open("Wilda", "Garnet-Shaw");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open(page(id, "2026-03-04"));
        Document page = visitor.submit(path(id), Map.of("g_right_1", "29", "g_right_2", "30", "g_right_3", "31", "g_left_1", "20", "g_left_why", "stopped for pain"));
        assertEquals(200, visitor.status(), page.text());
        String shown = oneSpace(page.select("#grip").first().closest("section").text());
        assertTrue(shown.contains("mean 30 kg; 89.3 % of the norm, z −0.74"), shown);
        assertTrue(shown.contains("mean 20 kg, of fewer than three trials"), shown);
        visitor.open(page(id, "2026-04-01"));
        page = visitor.submit(path(id), Map.of("g_right_1", "37", "g_right_2", "37", "g_right_3", "37"));
        shown = oneSpace(page.select("#grip").first().closest("section").text());
        assertTrue(shown.contains("+7 kg since 4 Mar 2026: as large as matters to most; measurement error not known"), shown);
    }

    @Test
    void theMotionsOfTheRegionsAreMeasuredAndSidesCompared() {
        long id = cases.open("Virgil", "Hepworth-Lane");
        QuarkusTransaction.requiringNew().run(() -> {
            SymptomReport report = new SymptomReport(files.findById(id), LocalDate.of(2026, 3, 4), LocalDate.of(2026, 3, 4));
            report.report(SymptomPattern.notAsked(), List.of(new RegionReading("neck", null, 5, null, null, null, Set.of(SymptomKind.ACHE), null, null)), false);
            report.savedBy("T. Clinician", Instant.EPOCH);
            reports.persist(report);
        });
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open(page(id, "2026-03-04"));
        assertTrue(visitor.page().select("#motion").first().closest("section").text().contains("Neck rotation"), visitor.page().text());
        assertFalse(visitor.page().text().contains("Low back"), "only what hurts is asked");
        Document page = visitor.submit(path(id), Map.of("d_cervical_rotation_right", "50", "d_cervical_rotation_left", "68", "p_cervical_rotation_right", "yes",
                "w_cervical_flexion_centre", "too dizzy"));
        assertEquals(200, visitor.status(), page.text());
        String shown = oneSpace(page.select("#motion").first().closest("section").text());
        assertTrue(shown.contains("18° less than left"), shown);
        assertTrue(shown.contains("18° more than right"), shown);
    }

    @Test
    void wrongReadingsAndOldPagesAreRefused() {
        long id = cases.open("Ursula", "Ivers-Kemp");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open(page(id, "2026-03-04"));
        visitor.submit(path(id), Map.of("g_right_1", "101", "g_left_1", "30", "g_left_2", "30", "g_left_3", "30", "g_left_why", "pain"));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#g_right_1-error").text().contains("0 to 100 kg"), visitor.page().text());
        assertFalse(visitor.page().select("#g_left_why-error").text().isBlank());
        Visitor other = accounts.visitor(Role.LEAD);
        other.open(page(id, "2026-03-04"));
        visitor.submit(path(id), Map.of("g_right_1", "31", "g_left_why", ""));
        assertEquals(200, visitor.status());
        other.submit(path(id), Map.of("g_right_1", "25"));
        assertEquals(409, other.status());
        assertTrue(other.page().text().contains("Stored meanwhile: 31"), other.page().text());
    }

    private static String path(long id) {
        return "/cases/" + id + "/grip-and-motion";
    }

    private static String page(long id, String day) {
        return path(id) + "?on=" + day;
    }

    private static String oneSpace(String text) {
        return text.replace('\u00a0', ' ');
    }
}
