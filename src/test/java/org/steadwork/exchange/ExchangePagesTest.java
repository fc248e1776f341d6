package org.steadwork.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.Visits;
import org.steadwork.web.Dates;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** The exchange page of a case: who may have what, and the calendars. */
@QuarkusTest
class ExchangePagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    Visits visits;

    @Inject
    Statements statements;

    @Inject
    EntityManager db;

    private static Calendar read(String text) throws IOException, ParserException {
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        assertFalse(calendar.validate().hasErrors(), () -> calendar.validate().toString());
        return calendar;
    }

    @Test
    void plannedVisitsComeBackFromTheCalendar() throws IOException, ParserException {
        long id = cases.open("Cora", "Calendar-Quill");
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        clinician.open("/cases/" + id + "/visits.ics");
        assertEquals(0, read(clinician.answer().asString()).getComponents(Component.VEVENT).size());
        LocalDate day = LocalDate.now().plusDays(9);
        QuarkusTransaction.requiringNew().run(() -> visits.add(db.find(CaseFile.class, id), day, VisitKind.FOLLOW_UP, Attendance.PLANNED));
        for (String path : List.of("/cases/" + id + "/visits.ics", "/my-visits.ics")) {
            clinician.open(path);
            String text = clinician.answer().asString();
            List<VEvent> events = read(text).getComponents(Component.VEVENT);
            assertTrue(events.stream().anyMatch(event -> event.getDateTimeStart().getDate().equals(day)), text);
            assertFalse(text.contains("Cora") || text.contains("Quill") || text.contains("Neck ache"), text);
        }
    }

    /** Source: in the United Kingdom summer time begins on 30 Mar 2031 (Summer Time Order 2002); 9:30 stays 9:30. */
    @Test
    void aVisitWithATimeStaysAtItsHour() throws IOException, ParserException {
        long id = cases.open("Tim", "Timed");
        Visit visit = QuarkusTransaction.requiringNew().call(() -> visits.add(db.find(CaseFile.class, id), LocalDate.of(2031, 3, 31), VisitKind.FOLLOW_UP, Attendance.PLANNED));
        VisitCalendar calendar = new VisitCalendar("mark", ZoneId.of("Europe/London"), Instant.EPOCH, Map.of(visit.id(), new VisitTimes.Span(LocalTime.of(9, 30), 40)));
        String text = calendar.of(List.of(visit), one -> "Appointment", "3 Yard").toString();
        VEvent event = (VEvent) read(text).getComponents(Component.VEVENT).get(0);
        assertEquals(Instant.parse("2031-03-31T08:30:00Z"), Instant.from(event.getDateTimeStart().getDate()));
        assertTrue(text.contains("DURATION:PT40M") && text.contains("DTSTART;TZID=Europe/London:20310331T093000"), text);
    }

    @Test
    void nothingGoesToAReaderWithoutAConsentInForce() {
        long id = cases.open("Nell", "Noconsent");
        Visitor lead = accounts.visitor(Role.LEAD);
        String path = "/cases/" + id;
        lead.open(path);
        String patient = lead.page().select(".rail__name a").attr("href");
        lead.open(patient + "/edit");
        lead.submit(patient + "/edit", Map.of("employer", "Quay " + System.nanoTime()));
        assertEquals(1, lead.open(path + "/exchange").select("tbody tr").size());
        lead.open(path + "/consents/new");
        String employer = lead.page().select("select[name=to] option[value^=employer-], input[name=to][value^=employer-]").get(0).val();
        assertEquals(404, status(lead, path + "/exchange/bundle.json?for=" + employer));
        lead.open(path + "/consents/new?to=" + employer);
        lead.submit(path + "/consents/new", Map.of("how", "spoken"));
        assertEquals(200, status(lead, path + "/exchange/bundle.json?for=" + employer));
        assertFalse(lead.answer().asString().contains("72514-3"));
        lead.open(path + "/exchange");
        assertTrue(lead.page().text().contains("Pain scores"), lead.page().text());
        lead.open(path + "/letters");
        String withdraw = lead.page().select("a[href*=/consents/]").stream().map(link -> link.attr("href")).filter(href -> href.endsWith("/withdraw")).findFirst().orElseThrow();
        lead.open(withdraw);
        lead.submit(withdraw, Map.of("withdrawnOn", Dates.shown(LocalDate.now()), "how", "told at the desk"));
        assertEquals(403, status(lead, path + "/exchange/bundle.json?for=" + employer));
        assertTrue(lead.page().text().contains("Nothing was handed out"), lead.page().text());
        assertEquals(403, status(lead, "/api/cases/" + id + "/fhir?for=" + employer));
        List<String> noted = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select e.detail from AuditEvent e where e.caseFileId = ?1 and e.action = 'handed out the case as FHIR'",
                String.class).setParameter(1, id).getResultList());
        assertEquals(1, noted.size(), noted.toString());
    }

    private static int status(Visitor visitor, String path) {
        visitor.open(path);
        return visitor.status();
    }

    @Test
    void thePageTakesAsManyStatementsWithManyVisitsAsWithFew() {
        long few = cases.open("Fred", "Few");
        long many = cases.open("Mona", "Many");
        QuarkusTransaction.requiringNew().run(() -> {
            for (int i = 1; i <= 20; i++) {
                visits.add(db.find(CaseFile.class, many), TestCases.OPENED.plusDays(i), VisitKind.FOLLOW_UP, Attendance.ATTENDED);
            }
        });
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        for (String path : List.of("/exchange", "/exchange/bundle.json", "/visits.ics")) {
            clinician.open("/cases/" + few + path);
            assertEquals(statements.during(() -> clinician.open("/cases/" + few + path)), statements.during(() -> clinician.open("/cases/" + many + path)), path);
        }
    }
}
