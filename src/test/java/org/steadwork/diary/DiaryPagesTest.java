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
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.casefile.Attendance;
import org.steadwork.web.Dates;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** The diary as the front desk works it: book, move, cancel, undo; hours, leave and closures; and that record and diary agree. */
@QuarkusTest
class DiaryPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    Statements statements;

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
        String name = "Diarist-" + System.nanoTime();
        long id = cases.open("Ada", name);
        return new Known(id, QuarkusTransaction.requiringNew().call(() -> db.createQuery("select c.patient.id from CaseFile c where c.id = ?1", Long.class).setParameter(1, id)
                .getSingleResult()), name);
    }

    private LocalDate monday(int weeks) {
        return LocalDate.now(clock).plusWeeks(weeks).with(TemporalAdjusters.next(DayOfWeek.MONDAY));
    }

    private Visitor book(Known known, LocalDate day, String start) {
        Visitor visitor = accounts.visitor(Role.ASSISTANT);
        visitor.open("/diary/book?patient=" + known.patientId());
        visitor.submit("/diary/book", Map.of("clinician", accounts.of(Role.CLINICIAN).id().toString(), "kind", "follow_up", "day", Dates.shown(day), "start", start, "room", "none"));
        return visitor;
    }

    private long appointment(Known known) {
        return QuarkusTransaction.requiringNew().call(() -> db.createQuery("select max(a.id) from Appointment a where a.patient.id = ?1", Long.class)
                .setParameter(1, known.patientId()).getSingleResult());
    }

    private Object[] stands(long appointment) {
        return QuarkusTransaction.requiringNew().call(() -> db.createQuery("select a.live, a.day, a.start, v.attendance, v.visitedOn from Appointment a join a.visit v where a.id = ?1",
                Object[].class).setParameter(1, appointment).getSingleResult());
    }

    /** The columns share rows of five minutes: one that were longer or shorter than the others would show its visits at a wrong height. */
    @Test
    void everyColumnIsAsLongAsTheTimeShown() {
        LocalDate day = monday(22);
        Visitor visitor = book(known(), day.plusDays(2), "9:35");
        for (String page : List.of("/diary/week?day=" + day + "&whose=clinician-" + accounts.of(Role.CLINICIAN).id(), "/diary?day=" + day.plusDays(2),
                "/diary?by=room&day=" + day.plusDays(2))) {
            Element diary = visitor.open(page).selectFirst("[data-diary]");
            long rows = minutes(diary);
            assertTrue(rows > 0 || page.contains("by=room"), page);
            diary.select(".diary__list:not(.diary__list--loose)").forEach(list ->
                    assertEquals(rows, list.select(".diary__block").stream().mapToLong(DiaryPagesTest::minutes).sum(), () -> page + ": " + list.text()));
        }
    }

    private static long minutes(Element sized) {
        return sized.classNames().stream().filter(name -> name.matches("[hm]-\\d+"))
                .mapToLong(name -> Long.parseLong(name.substring(2)) * (name.startsWith("h") ? 60 : 1)).sum();
    }

    @Test
    void aVisitIsBookedMovedCancelledAndEachOfItUndone() {
        Known known = known();
        LocalDate day = monday(20);
        Visitor visitor = book(known, day, "9:30");
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().select(".diary__block--booked").text().contains(known.name()));
        long id = appointment(known);
        String page = "/diary/appointments/" + id;
        visitor.open(page);
        visitor.submit(page + "/move", Map.of("day", Dates.shown(day.plusDays(1)), "start", "14:05"));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertEquals(List.of(true, day.plusDays(1), 845, Attendance.PLANNED, day.plusDays(1)), List.of(stands(id)));
        visitor.submit(page, Map.of("do", "undo"));
        assertEquals(List.of(true, day, 570, Attendance.PLANNED, day), List.of(stands(id)));
        visitor.open(page);
        visitor.submit(page + "/cancel", Map.of("by", "patient"));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().text().contains("cancelled by the patient"), visitor.page().text());
        assertEquals(List.of(false, day, 570, Attendance.CANCELLED, day), List.of(stands(id)), "months before, so not late");
        visitor.submit(page, Map.of("do", "undo"));
        assertEquals(List.of(true, day, 570, Attendance.PLANNED, day), List.of(stands(id)));
        visitor.open(page);
        visitor.submit(page, Map.of("do", "undo"));
        assertEquals(List.of(false, day, 570, Attendance.CANCELLED, day), List.of(stands(id)), "the booking itself, whose visit is kept as cancelled by the clinic");
    }

    @Test
    void whatWasGivenAwayMeanwhileCannotBeUndone() {
        Known first = known();
        Known second = known();
        LocalDate day = monday(21);
        Visitor visitor = book(first, day, "10:00");
        String page = "/diary/appointments/" + appointment(first);
        visitor.open(page);
        visitor.submit(page + "/cancel", Map.of("by", "clinic"));
        assertEquals(200, book(second, day, "10:15").status());
        visitor.open(page);
        visitor.submit(page, Map.of("do", "undo"));
        assertEquals(409, visitor.status());
        assertTrue(visitor.page().text().contains("given to somebody else"), visitor.page().text());
    }

    @Test
    void aTakenTimeIsAnsweredWithWhatWasTypedAndFreeTimes() {
        LocalDate day = monday(22);
        assertEquals(200, book(known(), day, "11:00").status());
        Visitor late = book(known(), day, "11:15");
        assertEquals(409, late.status());
        assertTrue(late.page().text().contains("has somebody else at 11:15 to 11:45"), late.page().text());
        assertEquals("11:15", late.page().select("input[name=start]").val());
        List<String> offered = late.page().select("button[name=take]").eachAttr("value");
        assertTrue(offered.stream().anyMatch(one -> one.startsWith(day.toString())) && offered.stream().noneMatch(one -> one.startsWith(day + " 11:00")
                || one.startsWith(day + " 11:15") || one.startsWith(day + " 10:45")), offered.toString());
    }

    @Test
    void hoursLeaveClosuresThePastAndTheGridAreHeld() {
        LocalDate day = monday(23);
        Known known = known();
        assertRefused(book(known, day, "7:00"), "outside the hours");
        assertRefused(book(known, day, "12:15"), "outside the hours");
        assertRefused(book(known, day.plusDays(5), "10:00"), "outside the hours");
        assertRefused(book(known, LocalDate.now(clock).minusDays(1), "10:00"), "cannot be booked in the past");
        assertRefused(book(known, day, "10:03"), "steps of 5 minutes");
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/diary/clinic/leave/new");
        lead.submit("/diary/clinic/leave/new", Map.of("who", "clinic", "firstOn", Dates.shown(day.plusDays(1)), "words", "Bank holiday"));
        assertEquals(200, lead.status(), lead.page().text());
        lead.open("/diary/clinic/leave/new");
        lead.submit("/diary/clinic/leave/new", Map.of("who", accounts.of(Role.CLINICIAN).id().toString(), "firstOn", Dates.shown(day), "from", "14:00", "to", "15:00", "words", "Course"));
        assertRefused(book(known, day.plusDays(1), "10:00"), "The clinic is closed");
        assertRefused(book(known, day, "14:30"), "Course");
        assertEquals(200, book(known, day, "15:00").status());
        assertEquals(200, lead.open("/diary?day=" + day.plusDays(1)).select("h1").size() * 200);
        assertTrue(lead.page().text().contains("Bank holiday"), lead.page().text());
    }

    @Test
    void theHoursOfAClinicianAreSetByTheLeadAndAWrongLineIsSaidAtItsDay() {
        Visitor lead = accounts.visitor(Role.LEAD);
        String page = "/diary/clinic/hours/" + accounts.of(Role.LEAD).id();
        lead.open(page);
        lead.submit(page, Map.of("monday", "9-12, 11-13", "tuesday", "late"));
        assertEquals(422, lead.status());
        assertEquals(2, lead.page().select(".field__error").size(), lead.page().text());
        Visitor other = accounts.visitor(Role.LEAD);
        other.open(page);
        lead.open(page);
        lead.submit(page, Map.of("monday", "8:00-12:00", "saturday", "9-11"));
        assertEquals(200, lead.status(), lead.page().text());
        other.submit(page, Map.of("monday", "10-12"));
        assertEquals(409, other.status());
        assertTrue(other.page().text().contains("Stored meanwhile: 08:00-12:00"), other.page().text());
        lead.open(page);
        lead.submit(page, Map.of("monday", "9:00-12:30, 13:30-17:00", "saturday", ""));
    }

    /** The record is the truth: what is changed in the case is true in the diary at once. */
    @Test
    void whatIsChangedInTheCaseIsTrueInTheDiary() {
        Known known = known();
        LocalDate day = monday(24);
        book(known, day, "9:00");
        long id = appointment(known);
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String attendance = "/cases/" + known.caseId() + "/attendance";
        visitor.open(attendance);
        Element planned = visitor.page().select("form[id^=visit-]").last();
        visitor.post(attendance, Map.of("csrf-token", List.of(planned.select("[name=csrf-token]").val()), "number", List.of(planned.select("[name=number]").val()), "version",
                List.of(planned.select("[name=version]").val()), "attendance", List.of("cancelled")));
        assertEquals(List.of(false, day, 540, Attendance.CANCELLED, day), List.of(stands(id)));
        assertEquals(200, book(known(), day, "9:00").status(), "its time is free");
        String visit = "/cases/" + known.caseId() + "/visits/2";
        visitor.open(visit);
        visitor.submit(visit, Map.of("attendance", "planned", "visitedOn", Dates.shown(day.plusDays(2))));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertEquals(List.of(false, day, 540, Attendance.PLANNED, day.plusDays(2)), List.of(stands(id)));
        assertTrue(toBook(visitor, known).isPresent(), "and it is to be booked");
        assertTrue(visitor.open("/diary?day=" + day.plusDays(2)).select(".notice--caution").text().contains(known.name()));
    }

    @Test
    void aNextReviewSetInTheCaseIsOfferedAroundItsDayAndBookedWithOnePress() {
        Known known = known();
        LocalDate day = monday(4).plusDays(2);
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String visit = "/cases/" + known.caseId() + "/visits/1";
        visitor.open(visit);
        visitor.submit(visit, Map.of("nextReviewOn", Dates.shown(day)));
        assertEquals(200, visitor.status(), visitor.page().text());
        Element row = toBook(visitor, known).orElseThrow();
        List<String> days = row.select("button").eachAttr("value").stream().map(value -> value.substring(0, 10)).distinct().toList();
        assertTrue(days.size() >= 3 && days.stream().map(LocalDate::parse).allMatch(one -> Math.abs(one.toEpochDay() - day.toEpochDay()) <= 2), days.toString());
        visitor.post("/diary/book", Map.of("csrf-token", List.of(row.select("[name=csrf-token]").val()), "patient", List.of(String.valueOf(known.patientId())), "caseId",
                List.of(String.valueOf(known.caseId())), "kind", List.of("follow_up"), "room", List.of("any"), "take", List.of(row.select("button").first().val())));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(toBook(visitor, known).isEmpty());
        assertTrue(visitor.open("/cases/" + known.caseId() + "/visits").select(".rail").text().contains("Booked"), visitor.page().select(".rail").text());
        visitor.open("/cases/" + known.caseId() + "/close");
        assertTrue(visitor.page().text().contains("Cancel it in the diary first"), visitor.page().text());
    }

    @Test
    void somebodyWithoutACaseIsBookedAndTheVisitBelongsToTheCaseOnceItIsOpened() {
        Visitor desk = accounts.visitor(Role.ASSISTANT);
        String name = "Newcomb-" + System.nanoTime();
        desk.open("/patients/new");
        desk.submit("/patients/new", Map.of("givenName", "Nia", "familyName", name, "birthDate", "3 May 1990", "sex", "female", "handedness", "right"));
        String patient = desk.at().getPath().replaceAll("\\D", "");
        LocalDate day = LocalDate.now(clock);
        while (day.getDayOfWeek().getValue() > 5 || day.equals(LocalDate.now(clock))) {
            day = day.plusDays(1);
        }
        desk.open("/diary/book?patient=" + patient);
        desk.submit("/diary/book", Map.of("kind", "follow_up", "clinician", accounts.of(Role.LEAD).id().toString(), "day", Dates.shown(day), "start", "16:00"));
        assertEquals(422, desk.status(), "only a first visit");
        String offered = desk.open("/diary/book?patient=" + patient).select("button[name=take]").first().val();
        desk.submit("/diary/book", Map.of("take", offered));
        assertEquals(200, desk.status(), desk.page().text());
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        clinician.open("/patients/" + patient + "/cases/new");
        clinician.submit("/patients/" + patient + "/cases/new", Map.of("complaint", "Wrist ache"));
        assertEquals(200, clinician.status(), clinician.page().text());
        long loose = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select count(a) from Appointment a where a.patient.id = ?1 and a.visit is null", Long.class)
                .setParameter(1, Long.valueOf(patient)).getSingleResult());
        assertEquals(0, loose);
    }

    @Test
    void theAssistantSeesNothingClinical() {
        Known known = known();
        LocalDate day = monday(25);
        Visitor desk = book(known, day, "9:00");
        long id = appointment(known);
        for (String path : List.of("/diary?day=" + day, "/diary?day=" + day + "&by=room", "/diary/week?day=" + day, "/diary/appointments/" + id, "/diary/book?patient=" + known.patientId(),
                "/diary/to-book", "/diary/waiting", "/diary/missed", "/diary/reminders")) {
            desk.open(path);
            assertEquals(200, desk.status(), path);
            String words = desk.page().select("main").text().toLowerCase();
            for (String clinical : List.of("neck ache", "red flag", "complaint", "pain")) {
                assertFalse(words.contains(clinical), path + " says " + clinical);
            }
        }
    }

    @Test
    void whatIsToBeBookedIsShownPageByPageAndEachOnce() {
        List<Known> all = Stream.generate(this::known).limit(31).toList();
        QuarkusTransaction.requiringNew().run(() -> db.createQuery("update CaseFile c set c.nextReviewOn = ?1 where c.id in ?2").setParameter(1, monday(30))
                .setParameter(2, all.stream().map(Known::caseId).toList()).executeUpdate());
        Visitor visitor = accounts.visitor(Role.ASSISTANT);
        List<Element> rows = toBook(visitor);
        all.forEach(one -> assertEquals(1, rows.stream().filter(row -> row.text().contains(one.name())).count()));
        assertEquals(30, visitor.open("/diary/to-book").select(".waiting__one").size());
        assertTrue(visitor.page().select(".sec__note").text().contains("1 to 30 of " + rows.size()), visitor.page().select(".sec__note").text());
        assertEquals(visitor.open("/diary/to-book?page=999999").select(".waiting__one").eachText(),
                rows.subList((rows.size() - 1) / 30 * 30, rows.size()).stream().map(Element::text).toList(), "past the end is the last");
        assertEquals("Page 1", visitor.open("/diary/to-book?page=%3Cb%3E").select(".list-pages p").text().replaceFirst(" of.*", ""));
    }

    private Optional<Element> toBook(Visitor visitor, Known known) {
        return toBook(visitor).stream().filter(row -> row.text().contains(known.name())).findFirst();
    }

    /** The rows of all its pages. */
    private static List<Element> toBook(Visitor visitor) {
        List<Element> rows = new ArrayList<>();
        String next = "/diary/to-book";
        while (!next.isEmpty()) {
            visitor.open(next);
            rows.addAll(visitor.page().select(".waiting__one"));
            next = visitor.page().select(".list-pages a:contains(Later)").attr("href");
        }
        return rows;
    }

    @Test
    void theCountOfStatementsDoesNotGrowWithWhatIsBooked() {
        LocalDate day = monday(26);
        Visitor visitor = accounts.visitor(Role.ASSISTANT);
        book(known(), day, "9:00");
        List<String> paths = List.of("/diary?day=" + day, "/diary?day=" + day + "&by=room", "/diary/week?day=" + day, "/diary/to-book", "/diary/waiting", "/diary/missed", "/diary/reminders");
        paths.forEach(visitor::open);
        List<Long> before = paths.stream().map(path -> statements.during(() -> visitor.open(path))).toList();
        for (String start : List.of("9:30", "10:00", "10:30", "11:00", "14:00")) {
            assertEquals(200, book(known(), day, start).status());
        }
        List<Long> after = paths.stream().map(path -> statements.during(() -> visitor.open(path))).toList();
        assertEquals(before, after, paths.toString());
        assertTrue(after.stream().allMatch(count -> count <= 14), after.toString());
    }

    @Test
    void aStaleOrUnknownAppointmentIsAnsweredInWords() {
        Known known = known();
        LocalDate day = monday(27);
        Visitor one = book(known, day, "9:00");
        String page = "/diary/appointments/" + appointment(known);
        Visitor other = accounts.visitor(Role.LEAD);
        one.open(page);
        other.open(page);
        other.submit(page + "/move", Map.of("start", "10:00"));
        assertEquals(200, other.status());
        one.submit(page + "/move", Map.of("start", "11:00"));
        assertEquals(409, one.status());
        assertEquals("11:00", one.page().select("input[name=start]").val());
        assertTrue(one.page().text().contains("Stored meanwhile: 10:00"), one.page().text());
        assertEquals("Not found", one.open("/diary/appointments/987654321").select("h1").text());
    }

    private static void assertRefused(Visitor visitor, String words) {
        assertEquals(422, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().select(".notice--stop").text().contains(words), visitor.page().select(".notice--stop").text());
    }
}
