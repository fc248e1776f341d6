package org.steadwork.meeting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import org.apache.pdfbox.preflight.ValidationResult;
import org.apache.pdfbox.preflight.parser.PreflightParser;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.letter.pdf.LetterPdf;
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class MeetingPagesTest {

    private static final String DUE = "1 Dec 2099";

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    MeetingCases meetings;

    @Inject
    Statements statements;

    @Test
    void aMeetingIsPlannedWithItsPeopleAndWrongInputComesBackAsTyped() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/meetings/new");
        visitor.submit("/meetings/new", Map.of("heldOn", "someday", "startsAt", "25:00", "chair", "", "guest1", "", "guestRole1", "manager", "guestFor1", "employer-x"));
        assertEquals(422, visitor.status());
        for (String field : List.of("heldOn", "startsAt", "chair", "guest1")) {
            assertFalse(visitor.page().select("#" + field + "-error, a[href=#" + field + "]").isEmpty(), field);
        }
        assertEquals("someday", visitor.page().select("#heldOn").val());
        assertEquals("manager", visitor.page().select("#guestRole1").val());
        String chair = String.valueOf(meetings.clinician());
        visitor.open("/meetings/new");
        visitor.submit("/meetings/new", Map.of("heldOn", "3 Mar 2098", "startsAt", "8.15", "chair", chair, "notes", chair, "guest1", "Jo Quayle", "guestRole1", "manager"));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().text().contains("3 Mar 2098, 08:15"), visitor.page().text());
        assertTrue(visitor.page().text().contains("Jo Quayle, manager"), visitor.page().text());
        String edit = visitor.at().getPath() + "/edit";
        Visitor other = accounts.visitor(Role.LEAD);
        other.open(edit);
        visitor.open(edit);
        visitor.submit(edit, Map.of("startsAt", "9:00"));
        assertEquals(200, visitor.status(), visitor.page().text());
        other.submit(edit, Map.of("startsAt", "10:00"));
        assertEquals(409, other.status());
        assertTrue(other.page().text().contains("Stored meanwhile: 9:00"), other.page().text());
        visitor.open(edit);
        visitor.submit(edit + "/call-off", Map.of());
        assertEquals(422, visitor.status());
        visitor.submit(edit + "/call-off", Map.of("why", "Snow."));
        assertTrue(visitor.page().text().contains("Called off") && visitor.page().text().contains("Snow."), visitor.page().text());
    }

    @Test
    void theAgendaFillsItselfWithReasonsThatCanBeOpened() {
        long id = cases.open("Ambrose", "Agendaworth");
        long meeting = meetings.plan(null, null);
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        Element row = row(visitor.open("/meetings/" + meeting), id);
        String words = row.text();
        assertTrue(words.contains("How it goes is unknown: no outcome measure was taken since"), words);
        assertTrue(words.contains("not known No red-flag question was asked."), words);
        assertTrue(words.contains("not known Whether the person is at work is not known."), words);
        assertFalse(words.contains("Agendaworth") || words.contains("Ambrose"), "a case number, not a name: " + words);
        String opened = row.select("details").first().text();
        assertTrue(opened.contains("Outcome not known past its due date") && opened.contains("Numbers set days late 7") && opened.contains("a proposal of ours"), opened);
        assertEquals("/cases/" + id + "/outcomes", row.select("details a").first().attr("href"));
        // an earlier meeting is the next one, and the later fills itself no more
        long earlier = meetings.plan(null, null);
        assertFalse(visitor.open("/meetings/" + earlier).select("a[href=/meetings/" + earlier + "/cases/" + id + "]").isEmpty());
        assertTrue(visitor.open("/meetings/" + meeting).select("a[href=/meetings/" + meeting + "/cases/" + id + "]").isEmpty());
    }

    @Test
    void moreCasesTakeNoMoreStatements() {
        cases.open("Una", "Countworth");
        long meeting = meetings.plan(null, null);
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/meetings/" + meeting);
        long few = statements.during(() -> visitor.open("/meetings/" + meeting));
        for (int i = 0; i < 5; i++) {
            cases.open("Una " + i, "Countworth");
        }
        assertEquals(few, statements.during(() -> visitor.open("/meetings/" + meeting)));
        assertTrue(few < 40, "statements: " + few);
        System.out.println("Statements of the agenda: " + few);
    }

    @Test
    void casesArePutInOrderTakenOffWithAReasonAndPutOnByTheirNumber() {
        long one = cases.open("Orla", "Orderly");
        long two = cases.open("Odo", "Orderly");
        long meeting = meetings.plan(null, null);
        String path = "/meetings/" + meeting;
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        Visitor other = accounts.visitor(Role.LEAD);
        visitor.open(path);
        other.open(path);
        visitor.submit(path + "/agenda", Map.of("place" + one, "900", "place" + two, "899", "minutes" + two, "9"));
        assertEquals(200, visitor.status(), visitor.page().text());
        List<String> order = visitor.page().select(".agenda__name a").eachAttr("href");
        assertEquals(List.of(path + "/cases/" + two, path + "/cases/" + one), order.subList(order.size() - 2, order.size()));
        assertEquals("9", visitor.page().select("#minutes" + two).val());
        other.submit(path + "/agenda", Map.of("minutes" + two, "3"));
        assertEquals(409, other.status());
        assertEquals("3", other.page().select("#minutes" + two).val(), "what was typed stays");
        assertTrue(other.page().text().contains("Stored meanwhile: 9"), other.page().text());
        visitor.submit(path + "/agenda", Map.of("minutes" + two, "0", "place" + one, "x"));
        assertEquals(422, visitor.status());
        visitor.open(path);
        visitor.submit(path + "/agenda/remove", Map.of("case", String.valueOf(two)));
        assertEquals(422, visitor.status(), "without a reason");
        visitor.submit(path + "/agenda/remove", Map.of("case", String.valueOf(two), "why", "Settled by telephone."));
        assertTrue(visitor.page().select("a[href=" + path + "/cases/" + two + "]").isEmpty());
        assertTrue(visitor.page().text().contains("Settled by telephone."), "it stays, with the reason");
        visitor.submit(path + "/agenda/add", Map.of("number", "SW-0"));
        assertEquals(422, visitor.status());
        visitor.submit(path + "/agenda/add", Map.of("number", meetings.fileNumber(two).toLowerCase()));
        assertFalse(visitor.page().select("a[href=" + path + "/cases/" + two + "]").isEmpty());
    }

    @Test
    void theQuestionAndTheMinutesOfACaseAreKeptAndAStaleSaveShowsBoth() {
        long id = cases.open("Quentin", "Askworth");
        String path = "/meetings/" + meetings.plan(null, null) + "/cases/" + id;
        Visitor one = accounts.visitor(Role.CLINICIAN);
        Visitor two = accounts.visitor(Role.LEAD);
        one.open(path);
        two.open(path);
        one.submit(path, Map.of("question", "Load or rest first?", "minutes", "Load, slowly."));
        assertEquals(200, one.status(), one.page().text());
        assertEquals("Load or rest first?", one.page().select(".ask").text());
        two.submit(path, Map.of("question", "Another question?"));
        assertEquals(409, two.status());
        assertEquals("Another question?", two.page().select("#question").val());
        assertTrue(two.page().text().contains("Stored meanwhile: Load or rest first?"), two.page().text());
        two.submit(path, Map.of());
        assertEquals(200, two.status(), "saving again keeps what stands in the fields");
        two.submit(path, Map.of("question", "x".repeat(1001)));
        assertEquals(422, two.status());
    }

    @Test
    void thePageOfACaseIsWithoutANameAndItsStatementsAreFixed() {
        long id = cases.open("Fenella", "Pageworth");
        cases.open("Fergus", "Pageworth");
        String path = "/meetings/" + meetings.plan(null, null) + "/cases/" + id;
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String page = visitor.open(path).select("main").text();
        assertFalse(page.contains("Pageworth") || page.contains("Fenella"), page);
        assertTrue(page.contains("35 to 44") && page.contains("Neck ache") && page.contains("1 attended, none missed"), page);
        assertTrue(page.contains("Not known today") && page.contains("never asked"), "unknown is said: " + page);
        assertTrue(page.contains("nobody outside the team is present"), page);
        long few = statements.during(() -> visitor.open(path));
        cases.open("Flora", "Pageworth");
        assertEquals(few, statements.during(() -> visitor.open(path)));
        System.out.println("Statements of the page of a case: " + few);
        visitor.open(path.replace("/cases/", "/show/"));
        assertEquals(200, visitor.status());
        assertFalse(visitor.page().text().contains("Pageworth"), visitor.page().text());
        assertTrue(visitor.page().select("[data-clock]").text().equals("6 minutes"), "without script the planned minutes");
        assertFalse(visitor.page().select("a[rel=next]").isEmpty());
    }

    @Test
    void whatIsDecidedGoesOntoTheCaseAndOnTodayAndComesBackUntilDone() {
        long id = cases.open("Dorcas", "Decided");
        long meeting = meetings.plan(null, null);
        String path = "/meetings/" + meeting + "/cases/" + id;
        String who = String.valueOf(meetings.clinician());
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open(path);
        visitor.submit(path + "/outcome/decisions", Map.of("d-words", "Raise the load.", "d-due", "yesterday", "d-review", "1 Jan 2030"));
        assertEquals(422, visitor.status());
        assertEquals("Raise the load.", visitor.page().select("#d-words").val());
        for (String field : List.of("d-reason", "d-who", "d-due")) {
            assertFalse(visitor.page().select("#" + field + "-error").text().isBlank(), field);
        }
        visitor.submit(path + "/outcome/decisions", Map.of("d-words", "Raise the load.", "d-reason", "It is tolerated.", "d-who", who, "d-due", "30 Nov 2026",
                "d-review", "1 Nov 2026"));
        assertEquals(422, visitor.status(), "looked at again before it is due");
        visitor.submit(path + "/outcome/decisions", Map.of("d-words", "Raise the load.", "d-reason", "It is tolerated.", "d-who", who, "d-due", "30 Nov 2026",
                "d-review", "", "d-dissent", "One would wait."));
        assertEquals(200, visitor.status(), visitor.page().text());
        visitor.submit(path + "/outcome/actions", Map.of("a-words", "Ring the manager.", "a-who", who, "a-due", "15 Nov 2026"));
        assertEquals(200, visitor.status(), visitor.page().text());
        String today = visitor.open("/").select(".worklist__entry:has(a[href=/cases/" + id + "])").text();
        assertTrue(today.contains("Action overdue") && today.contains("Ring the manager."), today);
        assertTrue(today.contains("Advised") && today.contains("Raise the load."), today);
        String own = "/cases/" + id + "/meetings";
        visitor.open(own);
        assertTrue(visitor.page().text().contains("One would wait.") && visitor.page().text().contains("The meeting advises; the treating clinician"), visitor.page().text());
        assertTrue(visitor.page().select(".rail").text().contains("1 decision of a review meeting to answer"));
        String answer = visitor.page().select("form[action*=/decisions/]").attr("action");
        String number = answer.replaceAll(".*/", "");
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open(own);
        lead.submit(answer, Map.of("answer" + number, "accepted", "why" + number, "Fine."));
        assertEquals(422, lead.status(), "only the treating clinician decides");
        visitor.submit(answer, Map.of("answer" + number, "accepted"));
        assertEquals(422, visitor.status(), "a word why is missing");
        visitor.submit(answer, Map.of("answer" + number, "accepted", "why" + number, "She wants it."));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().text().contains("She wants it."));
        lead.submit(answer, Map.of("answer" + number, "declined", "why" + number, "No."));
        assertEquals(409, lead.status(), "an answer is given once");
        assertTrue(visitor.open("/cases/" + id).text().contains("Ring the manager."), "the map shows what we do about it");
        // the next meeting has it back until it is done
        long next = meetings.plan(null, null);
        assertTrue(row(visitor.open("/meetings/" + next), id).text().contains("Ring the manager."));
        visitor.open(own);
        String act = visitor.page().select("form[action*=/actions/]").attr("action");
        String action = act.replaceAll(".*/", "");
        visitor.submit(act, Map.of("state" + action, "dropped", "reason" + action, ""));
        assertEquals(422, visitor.status(), "dropped without a reason");
        Visitor late = accounts.visitor(Role.LEAD);
        late.open(own);
        visitor.submit(act, Map.of("state" + action, "done"));
        assertEquals(200, visitor.status(), visitor.page().text());
        late.submit(act, Map.of("state" + action, "dropped", "reason" + action, "Not needed."));
        assertEquals(409, late.status());
        assertFalse(visitor.open("/").select(".worklist__entry").text().contains("Ring the manager."), "Today lets it go");
        assertFalse(row(visitor.open("/meetings/" + next), id).text().contains("Ring the manager."));
        visitor.open(own);
        visitor.submit(act, Map.of("state" + action, "open", "reason" + action, "It was the wrong manager."));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.open("/").select(".worklist__entry").text().contains("Ring the manager."));
    }

    @Test
    void aDecisionIsPutRightOrTakenOutAndAStaleOneShowsBoth() {
        long id = cases.open("Rufus", "Righted");
        String path = "/meetings/" + meetings.plan(null, null) + "/cases/" + id;
        String who = String.valueOf(meetings.clinician());
        Visitor one = accounts.visitor(Role.CLINICIAN);
        one.open(path);
        one.submit(path + "/outcome/decisions", Map.of("d-words", "First.", "d-reason", "So.", "d-who", who, "d-due", DUE));
        String edit = one.page().select("form[action*=/outcome/decisions/]").attr("action");
        String field = "d" + edit.replaceAll(".*/", "") + "-words";
        Visitor two = accounts.visitor(Role.LEAD);
        two.open(path);
        one.submit(edit, Map.of(field, "Second.", "do", "save"));
        assertEquals(200, one.status(), one.page().text());
        two.submit(edit, Map.of(field, "Third.", "do", "save"));
        assertEquals(409, two.status());
        assertEquals("Third.", two.page().select("#" + field).val());
        assertTrue(two.page().text().contains("Stored meanwhile: Second."), two.page().text());
        two.submit(edit, Map.of("do", "save"));
        assertEquals(200, two.status(), two.page().text());
        assertTrue(two.page().text().contains("Third."));
        two.submit(edit, Map.of("do", "remove"));
        assertEquals(200, two.status(), two.page().text());
        assertTrue(two.page().select("form[action*=/outcome/decisions/]").isEmpty());
    }

    @Test
    void aCaseIsAskedForAndSettledOnceItWasDiscussed() {
        long id = cases.open("Alma", "Asking");
        String own = "/cases/" + id + "/meetings";
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open(own);
        visitor.submit(own + "/asks", Map.of("kind", "", "words", "Two doctors disagree."));
        assertEquals(422, visitor.status());
        assertEquals("Two doctors disagree.", visitor.page().select("#words").val());
        visitor.submit(own + "/asks", Map.of("kind", "conflict_of_advice", "words", "Two doctors disagree."));
        assertEquals(200, visitor.status(), visitor.page().text());
        visitor.submit(own + "/asks", Map.of("kind", "complaint", "words", "A letter came late."));
        String takeBack = visitor.page().select("form[action*=/asks/]").attr("action");
        visitor.submit(takeBack, Map.of("settle" + takeBack.replaceAll(".*/", ""), "It was not ours."));
        assertTrue(visitor.page().text().contains("Taken back: It was not ours."), visitor.page().text());
        long meeting = meetings.plan(null, null);
        String words = row(visitor.open("/meetings/" + meeting), id).text();
        assertTrue(words.contains("Conflict of advice") && words.contains("Two doctors disagree.") && !words.contains("A letter came late."), words);
        visitor.open(own);
        visitor.submit(own + "/planned-visits", Map.of("visits", "0"));
        assertEquals(422, visitor.status());
        visitor.submit(own + "/planned-visits", Map.of("visits", "8"));
        assertEquals(200, visitor.status(), visitor.page().text());
        String page = "/meetings/" + meeting + "/cases/" + id;
        assertTrue(visitor.open(page).text().contains("8 planned"));
        visitor.submit(page, Map.of("minutes", "One message was agreed."));
        close(visitor, meeting);
        assertTrue(visitor.open(own).text().contains("Discussed in the review meeting of"), visitor.page().text());
    }

    @Test
    void closingFreezesTheMinutesAndWhoeverStillWritesLosesNothing() throws IOException {
        long id = cases.open("Cosima", "Closedworth");
        long meeting = meetings.plan(null, null);
        String path = "/meetings/" + meeting;
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open(path + "/cases/" + id);
        visitor.submit(path + "/cases/" + id, Map.of("question", "What now?", "minutes", "Spoken of at length:\nłódź, 北京."));
        Visitor late = accounts.visitor(Role.LEAD);
        late.open(path + "/cases/" + id);
        Visitor stale = accounts.visitor(Role.LEAD);
        stale.open(path + "/close");
        visitor.open(path + "/cases/" + id);
        visitor.submit(path + "/cases/" + id + "/outcome/decisions", Map.of("d-words", "Raise the load.", "d-reason", "So.", "d-who",
                String.valueOf(meetings.clinician()), "d-due", DUE, "d-dissent", "One would wait."));
        stale.submit(path + "/close", Map.of());
        assertEquals(409, stale.status(), "something was written since these minutes were shown");
        close(visitor, meeting);
        String words = visitor.page().text();
        assertTrue(words.contains("What now?") && words.contains("Raise the load.") && words.contains("Other view: One would wait."), words);
        assertTrue(words.contains(meetings.fileNumber(id)) && !words.contains("Closedworth"), words);
        String fingerprint = visitor.page().select(".fingerprint").text();
        visitor.open(path + "/file/minutes.pdf");
        byte[] file = visitor.answer().asByteArray();
        assertTrue(fingerprint.contains(LetterPdf.sha256(file)), fingerprint);
        assertArchivable(file);
        String printed = PrintedPages.text(file);
        assertTrue(printed.contains("Raise the load.") && printed.contains("Closed by") && !printed.contains("Draft") && !printed.contains("Closedworth"), printed);
        late.submit(path + "/cases/" + id, Map.of("minutes", "A word too late."));
        assertEquals(409, late.status());
        assertTrue(late.page().text().contains("A word too late."), "what was typed is shown again: " + late.page().text());
        stale.submit(path + "/close", Map.of());
        assertEquals(409, stale.status());
        assertThrows(RuntimeException.class, () -> meetings.force("update review_meeting set version = version + 1, starts_at = '09:00' where id = ?1", meeting),
                "the database itself holds the meeting still");
        visitor.open(path);
        visitor.submit(path + "/addenda", Map.of("words", ""));
        assertEquals(422, visitor.status());
        visitor.submit(path + "/addenda", Map.of("words", "The load was 6 kg, not 8."));
        assertTrue(visitor.page().text().contains("The load was 6 kg, not 8."), visitor.page().text());
        visitor.open(path + "/file/minutes.pdf");
        assertTrue(Arrays.equals(file, visitor.answer().asByteArray()), "the file stays as it was closed");
        visitor.open(path + "/cases/" + id);
        assertEquals(path, visitor.at().getPath(), "a closed meeting leads to its minutes");
    }

    @Test
    void aMeetingOnADayToComeIsNotClosed() {
        String chair = String.valueOf(meetings.clinician());
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/meetings/new");
        visitor.submit("/meetings/new", Map.of("heldOn", "4 Mar 2098", "chair", chair, "notes", chair));
        String close = visitor.at().getPath() + "/close";
        visitor.open(close);
        visitor.submit(close, Map.of());
        assertEquals(422, visitor.status());
    }

    @Test
    void twoWhoCloseAtOnceMakeOneSetOfMinutesAndTwoWhoWriteLoseNothing() {
        long id = cases.open("Rosa", "Racing");
        long meeting = meetings.plan(null, null);
        String path = "/meetings/" + meeting;
        String who = String.valueOf(meetings.clinician());
        List<Visitor> four = Stream.generate(() -> accounts.visitor(Role.CLINICIAN)).limit(4).toList();
        four.forEach(one -> one.open(path + "/cases/" + id));
        ExecutorService atOnce = Executors.newFixedThreadPool(4);
        CompletableFuture.allOf(four.stream().map(one -> CompletableFuture.runAsync(() -> one.submit(path + "/cases/" + id + "/outcome/actions",
                Map.of("a-words", "Action of " + four.indexOf(one), "a-who", who, "a-due", DUE)), atOnce)).toArray(CompletableFuture[]::new)).join();
        String words = four.get(0).open(path + "/cases/" + id).text();
        for (int i = 0; i < 4; i++) {
            assertTrue(four.get(i).status() == 200 && words.contains("Action of " + i) || four.get(i).status() == 409, i + " in " + words);
        }
        four.forEach(one -> one.open(path + "/close"));
        CompletableFuture.allOf(four.stream().map(one -> CompletableFuture.runAsync(() -> one.submit(path + "/close", Map.of()), atOnce))
                .toArray(CompletableFuture[]::new)).join();
        atOnce.shutdown();
        assertEquals(List.of(200, 409, 409, 409), four.stream().map(Visitor::status).sorted().toList());
    }

    @Test
    void aCaseIsHeldBackWhileAGuestIsInTheRoomWithoutConsent() {
        long id = cases.open("Gudrun", "Guestworth");
        long meeting = late("Jo Quayle", null, id);
        String path = "/meetings/" + meeting + "/cases/" + id;
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        for (String page : List.of(path, path.replace("/cases/", "/show/"))) {
            String words = visitor.open(page).select("main").text();
            assertTrue(words.contains("Held back") || words.contains("held back"), words);
            assertTrue(words.contains("Jo Quayle, manager") && !words.contains("Neck ache") && !words.contains("never asked"), words);
        }
        assertTrue(row(visitor.open("/meetings/" + meeting), id).text().contains("held back"));
        String room = pack(visitor, meeting, "?for=room");
        assertTrue(room.contains("Held back: there is no consent") && !room.contains("Neck ache") && !room.contains("never asked"), room);
        assertTrue(pack(visitor, meeting, "").contains("Neck ache"), "the clinicians have it all");
        visitor.open(path);
        visitor.submit(path + "/guests", Map.of());
        assertTrue(visitor.page().select("main").text().contains("Neck ache"), "the guest left: the case is shown");
        visitor.submit(path + "/guests", Map.of());
        assertTrue(visitor.page().select("main").text().contains("Held back"), "the guest is back");
    }

    /** A meeting with the employer in the room is a disclosure to the employer: the employer's column holds. */
    @Test
    void withConsentAGuestHearsWhatTheMatrixLetsThrough() {
        long id = cases.open("Consuela", "Consented");
        long employer = meetings.employer("Quayside Consented " + id);
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String patient = "/patients/" + meetings.patient(id) + "/edit";
        visitor.open(patient);
        visitor.submit(patient, Map.of("employer", "Quayside Consented " + id, "jobTitle", "Planner"));
        String consent = "/cases/" + id + "/consents/new";
        visitor.open(consent + "?to=employer-" + employer);
        visitor.submit(consent, Map.of("how", "spoken"));
        assertEquals(200, visitor.status(), visitor.page().text());
        long meeting = late("Jo Quayle", employer, id);
        String words = visitor.open("/meetings/" + meeting + "/cases/" + id).select("main").text();
        assertTrue(words.contains("planner") && words.contains("Work status"), words);
        for (String held : List.of("Neck ache", "never asked", "No risk screen", "attended", "no outcome measure", "No red-flag question")) {
            assertFalse(words.contains(held), held + " in " + words);
        }
        assertTrue(words.contains("Left out while guests are in the room: Complaint, Visits, Red flags"), words);
    }

    @Test
    void thePackIsAPageACaseArchivableAndWithoutNames() throws IOException {
        long id = cases.open("Peregrine", "Packworth");
        long meeting = late(null, null, id, cases.open("Prudence", "Packworth"));
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        int count = visitor.open("/meetings/" + meeting).select(".agenda__name").size();
        visitor.open("/meetings/" + meeting + "/file/pack.pdf");
        byte[] file = visitor.answer().asByteArray();
        assertArchivable(file);
        String text = PrintedPages.text(file);
        assertTrue(text.contains(meetings.fileNumber(id)) && text.contains("Confidential") && text.contains("Review meeting,"), text);
        assertFalse(text.contains("Packworth") || text.contains("Peregrine"), text);
        assertEquals(2, count);
        assertTrue(text.contains("Page " + (count + 1) + " of " + (count + 1)), "an agenda and " + count + " cases, a page each");
    }

    private long late(String guest, Long employer, long... caseIds) {
        long meeting = meetings.planLate(guest, employer);
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/meetings/" + meeting);
        for (long id : caseIds) {
            visitor.submit("/meetings/" + meeting + "/agenda/add", Map.of("number", meetings.fileNumber(id)));
            assertEquals(200, visitor.status(), visitor.page().text());
        }
        return meeting;
    }

    private static String pack(Visitor visitor, long meeting, String query) {
        visitor.open("/meetings/" + meeting + "/file/pack.pdf" + query);
        assertEquals(200, visitor.status());
        return PrintedPages.text(visitor.answer().asByteArray());
    }

    private static void assertArchivable(byte[] file) throws IOException {
        Path path = Files.createTempFile("meeting", ".pdf");
        Files.write(path, file);
        ValidationResult result = PreflightParser.validate(path.toFile());
        assertTrue(result.isValid(), () -> result.getErrorsList().stream().map(e -> e.getErrorCode() + " " + e.getDetails()).toList().toString());
        Files.delete(path);
    }

    private void close(Visitor visitor, long meeting) {
        visitor.open("/meetings/" + meeting + "/close");
        visitor.submit("/meetings/" + meeting + "/close", Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().text().contains("SHA-256"), visitor.page().text());
    }

    private static Element row(Element page, long caseId) {
        Element link = page.select(".agenda__name a[href$=/cases/" + caseId + "]").first();
        assertTrue(link != null, () -> "case " + caseId + " is not on the agenda: " + page.select(".agenda__name").eachText());
        return link.closest("li");
    }
}
