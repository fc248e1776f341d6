package org.steadwork.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.hibernate.envers.AuditReader;
import org.hibernate.envers.AuditReaderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Account;
import org.steadwork.account.Role;
import org.steadwork.body.BodyRegion;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.Dates;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

@QuarkusTest
class SymptomPagesTest {

    @Inject
    Statements statements;

    @Inject
    TestAccounts accounts;

    @Inject
    Patients patients;

    @Inject
    CaseFiles cases;

    @Inject
    SymptomReports reports;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    private LocalDate today;
    private LocalDate opened;
    private long caseId;
    private String page;

    @BeforeEach
    void openACase() {
        today = LocalDate.now(clock);
        opened = today.minusDays(30);
        Account clinician = accounts.of(Role.CLINICIAN);
        caseId = QuarkusTransaction.requiringNew().call(() -> {
            Patient patient = new Patient(patients.nextFileNumber(), "Bram", "Oduya-Lindqvist", today.minusYears(29), today);
            patients.persist(patient);
            CaseFile file = new CaseFile(patient, clinician, "Low back pain", null, opened);
            cases.persist(file);
            return file.id();
        });
        page = "/cases/" + caseId + "/symptoms";
    }

    private Visitor clinician() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open(page);
        return visitor;
    }

    /** Saves a report of a day from the page of a new report. */
    private void save(Visitor visitor, LocalDate day, Map<String, String> fields, String... zones) {
        visitor.open(page + "/new");
        Map<String, String> values = new HashMap<>(fields);
        values.put("reportedOn", Dates.shown(day));
        values.put("do", "save");
        visitor.submit(page + "/new", values, zones.length == 0 ? Map.of() : Map.of("zone", List.of(zones)));
    }

    private String shownForm(Visitor visitor) {
        return visitor.page().select("form[action^=" + page + "/]").attr("action");
    }

    private RegionReading onlyReading() {
        // a session of its own: the test's would still hold what it read before
        return QuarkusTransaction.requiringNew().call(() -> reports.latest(caseId).orElseThrow().readings().get(0));
    }

    @Test
    void onlyCliniciansSeeAndChangeSymptoms() {
        Visitor stranger = new Visitor();
        stranger.open(page);
        assertTrue(stranger.page().title().startsWith("Sign in"));
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        for (String path : List.of(page, page + "/new", page + "/1")) {
            assistant.open(path);
            assertEquals(403, assistant.status(), path);
        }
        for (Role role : List.of(Role.CLINICIAN, Role.LEAD)) {
            Visitor visitor = accounts.visitor(role);
            visitor.open(page);
            assertEquals(200, visitor.status());
            assertEquals("Symptoms", visitor.page().select("h1").text());
        }
    }

    @Test
    void aReportIsSavedAndShownAgain() {
        Visitor visitor = clinician();
        save(visitor, today, Map.of("now-low_back", "6", "worst-low_back", "8", "ache-low_back", "ache", "since-low_back", "1.5.2024",
                "nightWaking", "yes", "ownWords", "It shot down <the> leg"), "low_back", "calf_r");
        assertEquals(200, visitor.status());
        assertEquals("6", visitor.page().select("[name=now-low_back][checked]").val());
        assertEquals("not_asked", visitor.page().select("[name=now-calf_r][checked]").val());
        assertEquals("not_asked", visitor.page().select("[name=at_work-low_back][checked]").val());
        assertEquals(Dates.shown(LocalDate.of(2024, 5, 1)), visitor.page().select("#since-low_back").val());
        assertEquals("It shot down <the> leg", visitor.page().select("#ownWords").text());
        assertEquals("Low back, back view: pain 6 of 10, ache", visitor.page().select("#body-low_back").attr("aria-label"));
        assertTrue(visitor.page().select(".saved").text().contains("version 1"));
        SymptomReport report = reports.latest(caseId).orElseThrow();
        assertEquals(Set.of("low_back", "calf_r"), Set.copyOf(report.readings().stream().map(RegionReading::zone).toList()));
    }

    @Test
    void withoutScriptZonesAreAddedAndRemovedAndNothingTypedIsLost() {
        Visitor visitor = clinician();
        visitor.submit(page + "/new", Map.of("do", "add", "add", "low_back", "ownWords", "kept"));
        assertEquals(200, visitor.status());
        assertEquals(List.of("low_back"), visitor.page().select("form [data-row]").eachAttr("data-row"));
        assertEquals("kept", visitor.page().select("#ownWords").text());
        assertEquals("now-low_back", visitor.page().select("[autofocus]").attr("name"));
        visitor.submit(page + "/new", Map.of("do", "add", "add", "neck", "now-low_back", "4"));
        assertEquals(List.of("neck", "low_back"), visitor.page().select("form [data-row]").eachAttr("data-row"));
        assertEquals("4", visitor.page().select("[name=now-low_back][checked]").val());
        visitor.submit(page + "/new", Map.of("do", "remove-neck"));
        assertEquals(List.of("low_back"), visitor.page().select("form [data-row]").eachAttr("data-row"));
        visitor.submit(page + "/new", Map.of("do", "add", "add", ""));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#add-error").text().contains("Choose a zone"));
        assertTrue(reports.of(caseId).isEmpty());
    }

    @Test
    void aDayThatCannotBeIsAnsweredAtTheFieldAndKept() {
        Visitor visitor = clinician();
        Map<LocalDate, String> wrong = Map.of(today.plusDays(1), "in the future", opened.minusDays(1), "before the case was opened",
                today.minusYears(30), "before the patient was born");
        wrong.forEach((day, reason) -> {
            save(visitor, day, Map.of("now-neck", "3", "ownWords", "kept"), "neck");
            assertEquals(422, visitor.status(), reason);
            assertTrue(visitor.page().select("#reportedOn-error").text().contains(reason), reason);
            assertEquals("true", visitor.page().select("#reportedOn").attr("aria-invalid"));
            assertEquals(1, visitor.page().select("[role=alert] a[href=#reportedOn]").size());
            assertEquals(Dates.shown(day), visitor.page().select("#reportedOn").val());
            assertEquals("kept", visitor.page().select("#ownWords").text());
            assertEquals("3", visitor.page().select("[name=now-neck][checked]").val());
        });
        assertTrue(reports.of(caseId).isEmpty());
    }

    @Test
    void otherWrongInputIsAnsweredAtItsField() {
        Visitor visitor = clinician();
        save(visitor, today, Map.of("now-neck", "11", "since-neck", "31.2.2024", "pattern-neck", "x".repeat(401), "nightWaking", "maybe"),
                "neck");
        assertEquals(422, visitor.status());
        for (String field : List.of("now-neck", "since-neck", "pattern-neck", "nightWaking")) {
            assertFalse(visitor.page().select("#" + field + "-error").isEmpty(), field);
            assertEquals(1, visitor.page().select("[role=alert] a[href=#" + field + "]").size(), field);
            assertFalse(visitor.page().select("#" + field).isEmpty(), field);
        }
        save(visitor, today, Map.of("since-neck", Dates.shown(today.plusDays(3))), "neck");
        assertTrue(visitor.page().select("#since-neck-error").text().contains("between birth and the report"));
        save(visitor, today, Map.of(), "tail");
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#add-error").text().contains("not on the body chart"));
    }

    @Test
    void nothingMarkedIsNeverTakenForNoSymptoms() {
        Visitor visitor = clinician();
        save(visitor, today, Map.of());
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#add-error").text().contains("No symptoms today"));
        save(visitor, today, Map.of("symptomFree", "yes"), "neck");
        assertEquals(422, visitor.status());
        save(visitor, today, Map.of("symptomFree", "yes"));
        assertEquals(200, visitor.status());
        assertTrue(reports.latest(caseId).orElseThrow().symptomFree());
    }

    @Test
    void aLaterReportStartsFromTheLastAndSaysWhatDiffers() {
        Visitor visitor = clinician();
        save(visitor, today.minusDays(14), Map.of("now-low_back", "6", "worst-low_back", "8", "ache-low_back", "ache", "nightWaking", "yes"),
                "low_back", "calf_r");
        visitor.open(visitor.page().select("a[href^=" + page + "/new?from=]").attr("href"));
        assertEquals(2, visitor.page().select("form [data-row]").size());
        assertEquals("not_asked", visitor.page().select("[name=now-low_back][checked]").val());
        assertEquals("not_asked", visitor.page().select("[name=nightWaking][checked]").val());
        assertTrue(visitor.page().select("#now-low_back .scale__label").text().contains("was 6"));
        visitor.submit(page + "/new", Map.of("now-low_back", "4", "do", "save"), Map.of("zone", List.of("low_back")));
        String text = visitor.page().select("section[aria-labelledby=s-change]").text();
        assertTrue(text.contains("now 6 → 4 (−2); worst 8 → not asked"), text);
        assertTrue(text.contains("Right calf no longer marked"), text);
        assertTrue(text.contains("wakes at night yes → not asked"), text);
        assertEquals(2, visitor.page().select("section[aria-labelledby=s-change] svg").size());
        assertEquals(2, visitor.page().select("section[aria-labelledby=s-past] tbody tr").size());
        assertEquals(List.of(today, today.minusDays(14)), reports.of(caseId).stream().map(SymptomReport::reportedOn).toList());
        assertEquals(today, reports.latest(caseId).orElseThrow().reportedOn());
        assertEquals(today.minusDays(14), reports.baseline(caseId).orElseThrow().reportedOn());
        assertEquals(Set.of(BodyRegion.LOW_BACK, BodyRegion.ANKLE_FOOT), reports.regionsReported(caseId));
    }

    @Test
    void aStaleSaveShowsBothAndLosesNeither() {
        Visitor one = clinician();
        save(one, today, Map.of("now-neck", "5"), "neck");
        String path = shownForm(one);
        Visitor two = accounts.visitor(Role.LEAD);
        two.open(path);
        one.submit(path, Map.of("now-neck", "6", "ownWords", "hers", "do", "save"));
        two.submit(path, Map.of("now-neck", "2", "ownWords", "his", "do", "save"));
        assertEquals(409, two.status());
        assertEquals("2", two.page().select("[name=now-neck][checked]").val());
        assertEquals("his", two.page().select("#ownWords").text());
        assertTrue(two.page().select("#ownWords-stored").text().contains("hers"));
        assertTrue(two.page().select(".notice--caution").text().contains("now 6 → 2 (−4)"), two.page().select(".notice").text());
        assertEquals(6, onlyReading().now());
        two.submit(path, Map.of("do", "save"));
        assertEquals(200, two.status());
        assertEquals(2, onlyReading().now());
    }

    @Test
    void aSecondReportOfADayIsAConflictUnlessItIsTheSameSentTwice() {
        Visitor one = clinician();
        Visitor two = accounts.visitor(Role.LEAD);
        save(one, today, Map.of("now-neck", "5"), "neck");
        save(two, today, Map.of("now-neck", "5"), "neck");
        assertEquals(200, two.status());
        save(two, today, Map.of("now-neck", "1"), "neck");
        assertEquals(409, two.status());
        assertEquals(shownForm(one), shownForm(two));
        assertEquals(1, reports.of(caseId).size());
        save(one, today.minusDays(2), Map.of("now-neck", "7"), "neck");
        one.submit(shownForm(one), Map.of("reportedOn", Dates.shown(today), "do", "save"));
        assertEquals(422, one.status());
        assertTrue(one.page().select("#reportedOn-error").text().contains("already"));
    }

    @Test
    void twoFirstReportsOfADayAtOnceLeaveOneAndAConflict() throws Exception {
        List<Visitor> both = List.of(clinician(), accounts.visitor(Role.LEAD));
        ExecutorService pair = Executors.newFixedThreadPool(2);
        try {
            CyclicBarrier together = new CyclicBarrier(2);
            List<Future<Integer>> answers = new ArrayList<>();
            for (Visitor visitor : both) {
                visitor.open(page + "/new");
                String now = String.valueOf(answers.size() + 3);
                answers.add(pair.submit(() -> {
                    together.await(20, TimeUnit.SECONDS);
                    visitor.submit(page + "/new", Map.of("now-neck", now, "do", "save"), Map.of("zone", List.of("neck")));
                    return visitor.status();
                }));
            }
            List<Integer> statuses = new ArrayList<>();
            for (Future<Integer> answer : answers) {
                statuses.add(answer.get(60, TimeUnit.SECONDS));
            }
            statuses.sort(null);
            assertEquals(List.of(200, 409), statuses);
        } finally {
            pair.shutdownNow();
        }
        assertEquals(1, reports.of(caseId).size());
    }

    @Test
    void savingAsksForATokenAndForAReportOfThisCase() {
        Visitor visitor = clinician();
        visitor.post(page + "/new", Map.of("do", List.of("save")));
        assertEquals(400, visitor.status());
        visitor.open(page + "/999999");
        assertEquals(404, visitor.status());
        visitor.open("/cases/999999/symptoms");
        assertEquals(404, visitor.status());
    }

    @Test
    void savingCanLeadOnToTheRedFlags() {
        Visitor visitor = clinician();
        save(visitor, today, Map.of("now-neck", "5"), "neck");
        visitor.submit(shownForm(visitor), Map.of("now-neck", "6", "do", "save-red-flags"));
        assertFalse(visitor.page().title().startsWith("Symptoms"));
        assertEquals(6, onlyReading().now());
        assertEquals(2, reports.latest(caseId).orElseThrow().number());
    }

    @Test
    void everyChangeIsInTheHistoryWithItsZones() {
        Visitor visitor = clinician();
        save(visitor, today, Map.of("now-neck", "5"), "neck");
        visitor.submit(shownForm(visitor), Map.of("now-neck", "3", "do", "save"));
        long id = reports.latest(caseId).orElseThrow().id();
        QuarkusTransaction.requiringNew().run(() -> {
            AuditReader history = AuditReaderFactory.get(db);
            assertEquals(List.of(5, 3), history.getRevisions(SymptomReport.class, id).stream()
                    .map(revision -> history.find(SymptomReport.class, id, revision).readings().get(0).now()).toList());
        });
    }

    @Test
    void thePageAsksNoMoreOfTheDatabaseWithMoreReports() {
        Visitor visitor = clinician();
        save(visitor, today.minusDays(10), Map.of("now-neck", "5"), "neck");
        long few = statements(visitor);
        for (int day = 9; day > 2; day--) {
            save(visitor, today.minusDays(day), Map.of("now-neck", "4", "now-low_back", "3"), "neck", "low_back", "calf_l");
        }
        assertEquals(few, statements(visitor));
    }

    private long statements(Visitor visitor) {
        long count = statements.during(() -> visitor.open(page));
        assertEquals(200, visitor.status());
        return count;
    }
}
