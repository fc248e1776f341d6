package org.steadwork.diary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.Visits;
import org.steadwork.kernel.Answer;
import org.steadwork.obstacle.ObstacleAnswer;
import org.steadwork.web.Dates;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** What follows a missed visit, for both who may see why; the waiting list; reminders. */
@QuarkusTest
class MissedAndWaitingTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    Visits visits;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    /** Everybody works the usual hours again, whatever another test set. */
    @BeforeEach
    void usualHours() {
        QuarkusTransaction.requiringNew().run(() -> db.createQuery("delete from WorkingWeek").executeUpdate());
    }

    private record Known(long caseId, long patientId, String name) {
    }

    private Known known() {
        String name = "Awaited-" + System.nanoTime();
        long id = cases.open("Ida", name);
        return new Known(id, QuarkusTransaction.requiringNew().call(() -> db.createQuery("select c.patient.id from CaseFile c where c.id = ?1", Long.class).setParameter(1, id)
                .getSingleResult()), name);
    }

    private String missed(Known known, int daysAgo) {
        return "v" + QuarkusTransaction.requiringNew().call(() -> visits.add(db.find(CaseFile.class, known.caseId()), LocalDate.now(clock).minusDays(daysAgo), VisitKind.FOLLOW_UP,
                Attendance.MISSED).id());
    }

    private static String row(Visitor visitor, Known known) {
        return visitor.open("/diary/missed").select(".worklist__entry").stream().map(Element::text).filter(text -> text.contains(known.name())).findFirst().orElse("");
    }

    private static void contact(Visitor visitor, String key, String route, String outcome) {
        String page = "/diary/missed/" + key;
        visitor.open(page);
        visitor.submit(page, Map.of("route", route, "outcome", outcome, "reason", "forgot"));
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    @Test
    void theFrontDeskPhonesByTwoRoutesAndTheEntryLeavesWhenANewDateStands() {
        Known known = known();
        String key = missed(known, 0);
        Visitor desk = accounts.visitor(Role.ASSISTANT);
        assertTrue(row(desk, known).contains("Tried so far: 0 of 2"), row(desk, known));
        contact(desk, key, "phone", "no_answer");
        assertTrue(row(desk, known).contains("Tried so far: 1 of 2"), row(desk, known));
        contact(desk, key, "text", "reached");
        assertTrue(row(desk, known).contains("Offer a new date"), row(desk, known));
        String offered = desk.open("/diary/book?patient=" + known.patientId()).select("button[name=take]").first().val();
        desk.submit("/diary/book", Map.of("take", offered));
        assertEquals(200, desk.status(), desk.page().text());
        assertEquals("", row(desk, known));
    }

    @Test
    void whyAPatientMustBePhonedTodayIsForTheClinicianAlone() {
        Known known = known();
        String key = missed(known, 0);
        QuarkusTransaction.requiringNew().run(() -> {
            ObstacleAnswer answer = new ObstacleAnswer(db.find(CaseFile.class, known.caseId()), "of_self_harm");
            answer.answer(Answer.YES, null, LocalDate.now(clock), "T. Clinician", Instant.now(clock));
            db.persist(answer);
        });
        Visitor desk = accounts.visitor(Role.ASSISTANT);
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        assertTrue(row(desk, known).contains("Phone today") && row(desk, known).contains("The clinician asks for it."), row(desk, known));
        assertTrue(row(clinician, known).contains("concern about self-harm is on record"), row(clinician, known));
        for (String path : List.of("/diary/missed", "/diary/missed/" + key, "/diary")) {
            String words = desk.open(path).text().toLowerCase();
            assertFalse(words.contains("self-harm") || words.contains("flag"), path);
        }
        contact(desk, key, "text", "reached");
        assertTrue(row(desk, known).contains("Phone today"), "a text is no talk");
        contact(desk, key, "phone", "reached");
        assertTrue(row(desk, known).contains("Offer a new date"), row(desk, known));
    }

    @Test
    void theSecondMissInARowGetsALetterAndFourteenDays() {
        Known known = known();
        missed(known, 30);
        String key = missed(known, 16);
        Visitor desk = accounts.visitor(Role.ASSISTANT);
        contact(desk, key, "phone", "no_answer");
        contact(desk, key, "email", "message");
        assertTrue(row(desk, known).contains("Second missed in a row") && row(desk, known).contains("14 days to reply"), row(desk, known));
        String page = "/diary/missed/" + key;
        desk.open(page);
        desk.submit(page, Map.of("route", "letter", "outcome", "message", "triedOn", Dates.shown(LocalDate.now(clock).minusDays(15)), "time", "9:00"));
        assertEquals(200, desk.status(), desk.page().text());
        assertTrue(row(desk, known).contains("The clinician decides about discharge"), row(desk, known));
        assertTrue(row(accounts.visitor(Role.CLINICIAN), known).contains("safety net"));
    }

    @Test
    void aContactBeforeTheMissOrInTheFutureOrOfNoRouteIsRefused() {
        Known known = known();
        String page = "/diary/missed/" + missed(known, 3);
        Visitor desk = accounts.visitor(Role.ASSISTANT);
        for (Map<String, String> wrong : List.of(Map.of("route", "phone", "outcome", "reached", "triedOn", Dates.shown(LocalDate.now(clock).minusDays(4))),
                Map.of("route", "phone", "outcome", "reached", "triedOn", Dates.shown(LocalDate.now(clock).plusDays(1))), Map.of("route", "pigeon", "outcome", "reached"),
                Map.of("route", "phone", "outcome", "reached", "time", "noonish"))) {
            desk.open(page);
            desk.submit(page, wrong);
            assertEquals(422, desk.status(), wrong.toString());
        }
    }

    @Test
    void aGapIsOfferedToWhoWaitsInOrderAndOnePressBooksIt() {
        LocalDate day = LocalDate.now(clock).plusWeeks(30).with(TemporalAdjusters.next(DayOfWeek.MONDAY));
        String clinician = accounts.of(Role.CLINICIAN).id().toString();
        Visitor desk = accounts.visitor(Role.ASSISTANT);
        Known usual = known();
        Known soon = known();
        Known other = known();
        Known afternoon = known();
        wait(desk, usual, Map.of("priority", "usual", "clinician", "any"), day);
        wait(desk, afternoon, Map.of("priority", "usual", "times", "afternoon"), day);
        wait(desk, soon, Map.of("priority", "soon"), day);
        wait(desk, other, Map.of("priority", "soon", "clinician", accounts.of(Role.LEAD).id().toString()), day);
        String gap = "/diary/book?day=" + day + "&clinician=" + clinician + "&start=09:00";
        List<String> order = desk.open(gap).select("section:has(#fits) li b").eachText().stream().filter(name -> name.contains("Awaited-")).toList();
        assertEquals(List.of("Ida " + soon.name(), "Ida " + usual.name(), "Ida " + afternoon.name()), order.stream()
                .filter(name -> List.of(usual, soon, other, afternoon).stream().anyMatch(one -> name.endsWith(one.name()))).toList());
        Element form = desk.page().select("section:has(#fits) li:contains(" + soon.name() + ") form").first();
        desk.submit(form.attr("action"), Map.of());
        assertEquals(200, desk.status(), desk.page().text());
        assertTrue(desk.page().select(".diary__block--booked").text().contains(soon.name()));
        assertFalse(desk.open("/diary/waiting").text().contains(soon.name()));
        desk.open("/diary?day=" + day);
        String appointment = desk.page().select(".diary__block--booked a:contains(" + soon.name() + ")").attr("href");
        desk.open(appointment);
        desk.submit(appointment, Map.of("do", "undo"));
        assertTrue(desk.open("/diary/waiting").text().contains(soon.name()), "who is unbooked waits again");
        String entry = desk.page().select(".waiting__one:contains(" + soon.name() + ") .waiting__do a").attr("href");
        desk.open(entry);
        desk.submit(entry, Map.of("latestUntil", Dates.shown(day.minusDays(400))));
        assertEquals(422, desk.status());
        desk.open(entry);
        desk.submit(entry + "/off", Map.of());
        assertFalse(desk.open("/diary/waiting").text().contains(soon.name()));
    }

    private void wait(Visitor desk, Known known, Map<String, String> changes, LocalDate day) {
        String page = "/diary/waiting/new";
        desk.open(page + "?patient=" + known.patientId());
        Map<String, String> typed = new HashMap<>(changes);
        typed.put("earliestOn", Dates.shown(day));
        typed.put("latestUntil", Dates.shown(day.plusDays(4)));
        desk.submit(page, typed);
        assertEquals(200, desk.status(), desk.page().text());
    }

    @Test
    void theReminderFileHoldsNothingThatASpreadsheetRunsAndSaysThatItWasExported() {
        String name = "=cmd|calc-" + System.nanoTime();
        Visitor desk = accounts.visitor(Role.ASSISTANT);
        desk.open("/patients/new");
        desk.submit("/patients/new", Map.of("givenName", "=1+1", "familyName", name, "birthDate", "3 May 1990", "sex", "female", "handedness", "right", "phone", "+44 1632 960999"));
        String patient = desk.at().getPath().replaceAll("\\D", "");
        String offered = desk.open("/diary/book?patient=" + patient + "&day=" + LocalDate.now(clock)).select("button[name=take]").first().val();
        desk.submit("/diary/book", Map.of("take", offered));
        assertEquals(200, desk.status(), desk.page().text());
        boolean listed = desk.open("/diary/reminders").text().contains(name);
        String token = desk.open("/patients/new").select("[name=csrf-token]").val();
        desk.post("/diary/reminders/export", Map.of("csrf-token", List.of(token)));
        assertEquals(200, desk.status());
        String csv = desk.answer().asString();
        assertTrue(csv.startsWith("Name,Telephone,E-mail,Date,Time,Place\r\n"), csv);
        assertEquals(listed, csv.contains(name));
        for (String line : csv.split("\r\n")) {
            assertFalse(line.matches("^\"?[=+@-].*") || line.matches(".*,\"?[=+@-].*"), line);
        }
        assertFalse(csv.toLowerCase().contains("neck"));
        assertTrue(!listed || desk.open("/diary/reminders").select("tr:contains(" + name + ")").text().contains("not sent"));
        assertEquals("'=1+1", Reminders.harmless("=1+1"));
        assertEquals("'\t=1", Reminders.harmless("\t=1"));
        assertEquals("Anne-Marie", Reminders.harmless("Anne-Marie"));
    }
}
