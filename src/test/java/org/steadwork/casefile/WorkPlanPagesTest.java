package org.steadwork.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.Dates;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class WorkPlanPagesTest {

    private static final List<String> WEEK = List.of("monday", "tuesday", "wednesday", "thursday", "friday");

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    WorkPlans plans;

    @Inject
    WorkPlanSteps steps;

    @Inject
    WorkStatuses statuses;

    @Inject
    CaseFiles files;

    @Inject
    Statements statements;

    @Inject
    Clock clock;

    @Test
    void onlyCliniciansSeeWorkAndReturn() {
        long id = cases.open("Ansel", "Thornby-Weir");
        for (String path : List.of(page(id), page(id) + "/edit")) {
            Visitor assistant = accounts.visitor(Role.ASSISTANT);
            assistant.open(path);
            assertEquals(403, assistant.status(), path);
            Visitor lead = accounts.visitor(Role.LEAD);
            lead.open(path);
            assertEquals(200, lead.status(), path);
        }
    }

    // Example B of the published arithmetic: 37.5 h from half over three weeks is 19, 25 and 31.5 h, 37 h not worked
    @Test
    void theWeeksAreShownBeforeThePlanIsKept() {
        long id = cases.open("Berit", "Calloway-Moss");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        fill(visitor, id, Map.of("do", "preview"));
        String shown = oneSpace(visitor.page().text());
        assertTrue(shown.contains("19 h") && shown.contains("25 h") && shown.contains("31.5 h") && shown.contains("37 h not worked"), shown);
        assertTrue(plans.of(id).isEmpty(), "looking keeps nothing");
        visitor.submit(page(id) + "/edit", Map.of("do", "save"), Map.of("day", WEEK));
        assertEquals(200, visitor.status(), visitor.page().text());
        shown = oneSpace(visitor.page().select("#plan").first().closest("section").text());
        assertTrue(shown.contains("31.5 h") && shown.contains("the worker and the manager") && shown.contains("no lifts over 6 kg"), shown);
        WorkPlan kept = plans.current(id).orElseThrow();
        assertEquals(List.of(1140, 1500, 1890, 2250), kept.weekRows().stream().map(WorkPlanWeek::minutes).toList());
    }

    @Test
    void wrongInputIsAnsweredAtItsField() {
        long id = cases.open("Corwin", "Haddow-Pike");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        Map<String, String> wrong = Map.of("normalHours", "120", "startPercent", "100", "weeks", "0", "startsOn", "32 Mar 2026", "agreedWith", "",
                "agreedOn", Dates.shown(LocalDate.now(clock).plusDays(1)));
        visitor.open(page(id) + "/edit");
        visitor.submit(page(id) + "/edit", with(wrong), Map.of("day", List.of()));
        assertEquals(422, visitor.status());
        for (String field : List.of("normalHours", "startPercent", "weeks", "startsOn", "agreedWith", "agreedOn", "day")) {
            assertFalse(visitor.page().select("#" + field + "-error").text().isBlank(), field);
            assertEquals(1, visitor.page().select("#" + field).size(), field + " can be gone to");
        }
        assertTrue(plans.of(id).isEmpty());
    }

    @Test
    void aChangeIsANewPlanAndTheOldOneIsKept() {
        long id = cases.open("Delphine", "Marsh-Orton");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        fill(visitor, id, Map.of());
        Visitor other = accounts.visitor(Role.CLINICIAN);
        other.open(page(id) + "/edit");
        visitor.open(page(id) + "/edit");
        visitor.submit(page(id) + "/edit", Map.of("do", "save", "whyChanged", "", "agreedWith", "the worker"), Map.of("day", WEEK));
        assertEquals(422, visitor.status(), "a change says why");
        visitor.submit(page(id) + "/edit", Map.of("do", "save", "whyChanged", "The second week was too much.", "startPercent", "40"), Map.of("day", WEEK));
        assertEquals(200, visitor.status(), visitor.page().text());
        other.submit(page(id) + "/edit", Map.of("do", "save", "whyChanged", "Late.", "agreedWith", "the worker"), Map.of("day", WEEK));
        assertEquals(409, other.status());
        List<WorkPlan> all = plans.of(id);
        assertEquals(List.of(2, 1), all.stream().map(WorkPlan::number).toList());
        assertEquals(50, all.get(1).terms().graded().startPercent());
        assertEquals(2, plans.current(id).orElseThrow().number());
    }

    @Test
    void eachStepComesToTodayAndLeavesWhenItIsDecided() {
        long id = cases.open("Evander", "Lisle-Croft");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        fill(visitor, id, Map.of());
        assertEquals("Step due", due(id, LocalDate.of(2026, 3, 9)).label());
        assertTrue(due(id, LocalDate.of(2026, 3, 9)).reason().contains("week 1"));
        assertEquals(null, due(id, LocalDate.of(2026, 3, 8)), "not before its day");
        visitor.open(page(id));
        visitor.submit(page(id) + "/step", Map.of("move", "up", "do", "save"));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertEquals(null, due(id, LocalDate.of(2026, 3, 15)));
        assertTrue(due(id, LocalDate.of(2026, 3, 16)).reason().contains("week 2"));
        visitor.submit(page(id) + "/step", Map.of("worstPain", "7", "settled", "no", "workedHours", "19", "daysMissed", "0", "do", "weigh"));
        assertEquals(200, visitor.status());
        assertTrue(visitor.page().select("#advice").text().contains("back a step"), visitor.page().text());
        visitor.submit(page(id) + "/step", Map.of("do", "save", "move", "back"));
        assertEquals(422, visitor.status(), "going back says why");
        visitor.submit(page(id) + "/step", Map.of("do", "save", "move", "back", "words", "Two rules failed."));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().select("h1").text().contains("plan 2"), "the next plan is offered at once");
        assertEquals("Plan to change", due(id, LocalDate.of(2026, 3, 30)).label());
        visitor.open(page(id));
        visitor.submit(page(id) + "/end", Map.of("endReason", "Stopped for now."));
        assertEquals(200, visitor.status());
        assertEquals(null, due(id, LocalDate.of(2026, 3, 30)));
        visitor.post(page(id) + "/step", Map.of("csrf-token", List.of(visitor.page().select("input[name=csrf-token]").first().val()), "version", List.of("103")));
        assertEquals(409, visitor.status(), "no plan holds any more");
    }

    @Test
    void theStatusesAreDrawnAndStandInATable() {
        long id = cases.open("Fenella", "Groves-Tarn");
        QuarkusTransaction.requiringNew().run(() -> {
            CaseFile file = files.findById(id);
            status(file, LocalDate.of(2026, 3, 4), WorkStatusCode.OFF);
            status(file, LocalDate.of(2026, 3, 14), WorkStatusCode.REDUCED);
            status(file, LocalDate.of(2026, 3, 28), WorkStatusCode.FULL);
        });
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String text = visitor.open(page(id)).select("#status").first().closest("section").text();
        assertTrue(text.contains("10 calendar days off"), text);
        assertEquals(3, visitor.page().select("svg.wide rect").size());
        assertTrue(visitor.page().select("svg.wide desc").text().contains("Off from 4"), visitor.page().select("svg.wide desc").text());
        assertEquals(List.of("Full", "Reduced", "Off"), visitor.page().select("#status").first().closest("section").select("tbody th").eachText());
    }

    @Test
    void allOpenCasesCostOneQuery() {
        fill(accounts.visitor(Role.CLINICIAN), cases.open("Gideon", "Ashe-Barrow"), Map.of());
        assertEquals(1, statements.during(() -> QuarkusTransaction.requiringNew().run(() -> steps.entries(LocalDate.of(2026, 3, 9), CaseScope.all()))));
    }

    private Attention.Entry due(long id, LocalDate day) {
        return QuarkusTransaction.requiringNew().call(() -> steps.entries(day, CaseScope.one(id))).stream().findFirst().orElse(null);
    }

    private void status(CaseFile file, LocalDate from, WorkStatusCode code) {
        WorkStatus status = new WorkStatus(file, from);
        status.describe(code, null, WorkStatusDecider.DOCTOR, null, null, "Test", clock.instant());
        statuses.persist(status);
    }

    private void fill(Visitor visitor, long id, Map<String, String> changes) {
        visitor.open(page(id) + "/edit");
        visitor.submit(page(id) + "/edit", with(changes), Map.of("day", WEEK));
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    private static Map<String, String> with(Map<String, String> changes) {
        Map<String, String> form = new HashMap<>(Map.of("startsOn", "9 Mar 2026", "normalHours", "37.5", "startPercent", "50", "weeks", "3",
                "rounding", "half", "restrictions", "no lifts over 6 kg", "agreedWith", "the worker and the manager", "do", "save"));
        form.putAll(changes);
        return form;
    }

    private static String page(long id) {
        return "/cases/" + id + "/work-plan";
    }

    private static String oneSpace(String text) {
        return text.replace('\u00a0', ' ');
    }
}
