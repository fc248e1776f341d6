package org.steadwork.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.lang.reflect.Method;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.casefile.Visits;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class ReviewPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    Visits visits;

    @Inject
    VisitNotes notes;

    @Inject
    EntityManager db;

    @Test
    void notesAreForCliniciansAndAttendanceForTheDesk() {
        long id = cases.open("Abel", "Garrick-Holm");
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        for (String path : List.of("/cases/" + id + "/visits", "/cases/" + id + "/visits/1")) {
            assistant.open(path);
            assertEquals(403, assistant.status(), path);
            Visitor lead = accounts.visitor(Role.LEAD);
            lead.open(path);
            assertEquals(200, lead.status(), path);
            assertTrue(new Visitor().open(path).title().startsWith("Sign in"), path);
        }
        String patient = accounts.visitor(Role.LEAD).open("/cases/" + id).select("a[href~=^/patients/[0-9]+$]").attr("href");
        assertTrue(assistant.open(patient).select("main a").eachAttr("href").contains("/cases/" + id + "/attendance"), patient);
        Document desk = assistant.open("/cases/" + id + "/attendance");
        assertEquals(200, assistant.status());
        assertFalse(desk.text().contains("Neck ache"), "no complaint on the page of the desk");
        assertTrue(desk.text().replace("\u00a0", " ").contains("4 Mar 2026"), desk.text());
    }

    @Test
    void theDeskMarksAVisitAsMissedAndTheNoteSaysSo() {
        long id = cases.open("Bram", "Holroyd-Ives");
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        assistant.open("/cases/" + id + "/attendance");
        assistant.submit("/cases/" + id + "/attendance", Map.of("number", "1", "attendance", "missed"));
        assertEquals(200, assistant.status());
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        Document page = clinician.open("/cases/" + id + "/visits");
        assertTrue(page.text().contains("unknown, not “no change”"), page.text());
        String href = "/cases/" + id + "/visits/1";
        Element entry = clinician.open("/?case=" + id).select("a[href^=/diary/missed/]").first();
        assertNotNull(entry, "Today asks to phone");
        clinician.open(href);
        write(clinician, id, 1, "sign", Map.of("assessment", "Missed; phoned, forgot.", "plan", "New date tomorrow."));
        assertEquals(200, clinician.status());
        assertFalse(clinician.open("/?case=" + id).select("a[href=" + entry.attr("href") + "]").isEmpty(), "the note does not phone");
    }

    @Test
    void aReviewIsRecordedDraftedSignedAndAddedTo() {
        long id = cases.open("Cleo", "Inchbald-Joyce");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        review(visitor, id, 1, Map.of("s_nprs_worst", "8", "s_nprs_now", "5", "wsCode", "off", "wsFrom", "1 Mar 2026", "wsBy", "doctor"));
        assertEquals(200, visitor.status(), visitor.page().text());
        int second = plan(visitor, id, "18 Mar 2026");
        Document page = review(visitor, id, second, Map.of("attendance", "attended", "s_nprs_worst", "4", "wsCode", "reduced",
                "wsFrom", "20 Mar 2026", "wsUntil", "", "wsHours", "24", "wsBy", "clinician", "nextReviewOn", "1 Apr 2026"));
        assertEquals(200, visitor.status(), page.text());
        String assessment = page.select("#assessment").text();
        assertTrue(assessment.contains("Pain, worst: \u22124 since 4\u00a0Mar\u00a02026, important change, better"), assessment);
        assertTrue(page.select("#subjective").text().contains("Pain worst 4 of 10"), page.select("#subjective").text());
        assertTrue(page.select("#objective").text().contains("Own activities: not entered."));
        assertTrue(page.select("#plan").text().contains("off, from 1\u00a0Mar\u00a02026"), "on the day of the visit: " + page.select("#plan").text());
        assertTrue(page.select("#plan").text().contains("Next review: 1\u00a0Apr\u00a02026"), page.select("#plan").text());

        page = write(visitor, id, second, "sign", Map.of("plan", "", "assessment", "Better."));
        assertEquals(422, visitor.status());
        assertTrue(page.text().contains("The plan is missing"), page.text());
        page = write(visitor, id, second, "sign", Map.of("plan", "Go on <b>slowly</b>."));
        assertEquals(200, visitor.status());
        assertTrue(page.text().contains("Signed by Test Clinician, Physiotherapist"), page.text());
        assertTrue(page.text().replace("\u00a0", " ").contains("Late entry: written for 18 Mar 2026"), page.text());
        assertTrue(page.text().contains("Go on <b>slowly</b>."), "what is typed is shown, not run");

        page = visitor.submit("/cases/" + id + "/visits/" + second + "/addenda", Map.of("words", "Rang: settled by morning."));
        assertTrue(page.text().contains("Rang: settled by morning."), page.text());
        page = visitor.open("/cases/" + id + "/visits");
        assertTrue(page.text().contains("Addendum"), page.text());
        assertTrue(page.text().contains("19 calendar days off"), "off from 1 to 19 March: " + page.text());
    }

    @Test
    void aReviewAsksWhatIsDueAndNothingElse() {
        long id = cases.open("Cyra", "Ingleby-Judd");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/cases/" + id + "/outcomes?on=2026-03-04");
        visitor.submit("/cases/" + id + "/own-activities", Map.of("newActivity", "Sit through a meal", "newRating", "3"));
        Document first = review(visitor, id, 1, Map.of("s_nprs_worst", "8", "s_nprs_now", "5", "s_nprs_average", "6", "s_was", "5"));
        assertEquals(200, visitor.status(), first.text());
        assertFalse(first.select("input[name=s_was]").isEmpty() || first.select(".review__activity").isEmpty(), "what was entered stays to be corrected");
        assertFalse(first.select("a[href*=/outcomes/ompsq_sf]").isEmpty(), "the screen is due at intake, on its own page");
        int second = plan(visitor, id, "11 Mar 2026");
        Document page = visitor.open("/cases/" + id + "/visits/" + second);
        assertFalse(page.select("input[name=s_nprs_worst]").isEmpty(), "pain is due at each visit");
        assertTrue(page.select("input[name=s_was]").isEmpty() && page.select(".review__activity").isEmpty(), "asked a week ago, not due");
        page = review(visitor, id, second, Map.of("attendance", "attended", "s_nprs_worst", "6"));
        assertTrue(page.select("#objective").text().contains("Own activities: not due."), page.select("#objective").text());
        page = visitor.open("/cases/" + id + "/outcomes?on=2026-03-11");
        visitor.submit("/cases/" + id + "/outcomes", Map.of(page.select("input[name^=a_]").attr("name"), "4"));
        page = visitor.open("/cases/" + id + "/visits/" + second + "?draft=new");
        assertTrue(page.select("#objective").text().contains("Sit through a meal 4 (first 3)"), "rated all the same: " + page.select("#objective").text());
    }

    @Test
    void aSignedNoteIsChangedByNoPath() throws Exception {
        long id = cases.open("Dag", "Jessop-Kell");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/cases/" + id + "/visits/1");
        Visitor other = accounts.visitor(Role.LEAD);
        other.open("/cases/" + id + "/visits/1");
        write(visitor, id, 1, "sign", Map.of("assessment", "Stays.", "plan", "Stays."));
        String stored = noteText(id);

        other.submit("/cases/" + id + "/visits/1/note", Map.of("assessment", "Changed.", "plan", "Changed.", "do", "save"));
        assertEquals(409, other.status());
        assertTrue(other.page().text().contains("The note is signed and stays as it is"), other.page().text());
        other.open("/cases/" + id + "/visits/1");
        assertTrue(other.page().select("form[action$=/note]").isEmpty(), "no form offers to change it");

        Visitor third = accounts.visitor(Role.LEAD);
        third.open("/patients/new");
        String token = third.page().select("input[name=csrf-token]").first().val();
        third.post("/cases/" + id + "/visits/1", Map.of("csrf-token", List.of(token), "attendance", List.of("missed")));
        assertEquals(409, third.status());
        Visitor desk = accounts.visitor(Role.ASSISTANT);
        desk.open("/cases/" + id + "/attendance");
        desk.submit("/cases/" + id + "/attendance", Map.of("number", "1", "attendance", "missed"));
        assertEquals(422, desk.status());

        assertThrows(IllegalStateException.class, () -> QuarkusTransaction.requiringNew()
                .run(() -> note(id).draft("x", "x", "x", "x", "x", Instant.EPOCH)));
        assertThrows(IllegalStateException.class, () -> QuarkusTransaction.requiringNew().run(() -> note(id).sign(accounts.of(Role.LEAD), Instant.EPOCH)));
        refused(() -> QuarkusTransaction.requiringNew().run(() -> behindTheBack(note(id), "assessment", String.class, "Forged.")));
        refused(() -> QuarkusTransaction.requiringNew().run(() -> behindTheBack(note(id), "signedAt", Instant.class, null)));
        refused(() -> QuarkusTransaction.requiringNew().run(() -> {
            notes.delete(note(id));
            db.flush();
        }));
        assertEquals(stored, noteText(id));
    }

    @Test
    void datesAndRatingsThatCannotBeAreRefused() {
        long id = cases.open("Elin", "Kerslake-Lowe");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        Document page = review(visitor, id, 1, Map.of("visitedOn", "3 Mar 2026", "s_nprs_worst", "8"));
        assertEquals(422, visitor.status());
        assertTrue(page.text().contains("before the case was opened"), page.text());
        assertFalse(page.select("input[name=s_nprs_worst][value=8][checked]").isEmpty(), "what was entered is kept");
        review(visitor, id, 1, Map.of("s_nprs_worst", "11"));
        assertEquals(422, visitor.status());
        review(visitor, id, 1, Map.of("nextReviewOn", "3 Mar 2026"));
        assertEquals(422, visitor.status());
        review(visitor, id, 1, Map.of("visitedOn", "1 Jan 2031"));
        assertEquals(422, visitor.status());
        review(visitor, id, 1, Map.of("attendance", "missed", "s_nprs_worst", "8"));
        assertEquals(422, visitor.status(), "a missed visit has no ratings");
        review(visitor, id, 1, Map.of("wsCode", "off", "wsFrom", "5 Mar 2026", "wsUntil", "4 Mar 2026", "wsBy", "worker"));
        assertEquals(422, visitor.status());
        review(visitor, id, 1, Map.of("wsHours", "12"));
        assertEquals(422, visitor.status(), "hours without a status");
        visitor.open("/cases/" + id + "/visits");
        visitor.submit("/cases/" + id + "/visits", Map.of("visitedOn", "3 Mar 2026"));
        assertEquals(422, visitor.status());
    }

    @Test
    void onlyTheLatestVisitSetsTheNextReview() {
        long id = cases.open("Enid", "Latchford-Moy");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        review(visitor, id, 1, Map.of("nextReviewOn", "18 Mar 2026"));
        int second = plan(visitor, id, "18 Mar 2026");
        assertEquals(1, visitor.open("/cases/" + id + "/visits/1").select("input[name=nextReviewOn]").size(), "a planned visit has set nothing yet");
        Visitor old = accounts.visitor(Role.LEAD);
        old.open("/cases/" + id + "/visits/1");
        review(visitor, id, second, Map.of("attendance", "attended", "nextReviewOn", "1 Apr 2026"));
        Document typed = old.submit("/cases/" + id + "/visits/1", Map.of("nextReviewOn", "25 Mar 2026"));
        assertEquals(422, old.status(), "a page opened before the second visit still has the field");
        assertTrue(typed.text().contains("is later; the next review is set there"), typed.text());

        Document first = review(visitor, id, 1, Map.of("s_nprs_worst", "7"));
        assertEquals(200, visitor.status(), first.text());
        first = visitor.open("/cases/" + id + "/visits/1");
        assertTrue(first.select("input[name=nextReviewOn]").isEmpty());
        assertTrue(shown(first.select("#nextReviewOn").text()).contains("1 Apr 2026, set at visit 2"), first.select("#nextReviewOn").text());
        assertTrue(shown(visitor.open("/cases/" + id).select(".rail").text()).contains("1 Apr 2026"), "saving the first visit moved it");
    }

    @Test
    void anEarlierVisitShowsTheChangeAsItStoodThen() {
        long id = cases.open("Esme", "Lorimer-Nash");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        review(visitor, id, 1, Map.of("s_nprs_worst", "8"));
        plan(visitor, id, "18 Mar 2026");
        review(visitor, id, 2, Map.of("attendance", "attended", "s_nprs_worst", "7"));
        plan(visitor, id, "1 Apr 2026");
        review(visitor, id, 3, Map.of("attendance", "attended", "s_nprs_worst", "2"));
        assertEquals(List.of("2 was 8", "7 was 8", "8"), List.of(now(visitor, id, 3), now(visitor, id, 2), now(visitor, id, 1)));
        assertTrue(visitor.open("/cases/" + id + "/visits/2?draft=new").select("#assessment").text().contains("Pain, worst: \u22121 since"));
    }

    private static String now(Visitor visitor, long id, int visit) {
        return shown(visitor.open("/cases/" + id + "/visits/" + visit).select(".multiple__now").text());
    }

    private static String shown(String text) {
        return text.replace('\u00a0', ' ');
    }

    @Test
    void aReviewFromAnOldPageIsAConflict() {
        long id = cases.open("Finn", "Lamb-Mardle");
        Visitor one = accounts.visitor(Role.CLINICIAN);
        Visitor two = accounts.visitor(Role.LEAD);
        one.open("/cases/" + id + "/visits/1");
        two.open("/cases/" + id + "/visits/1");
        one.submit("/cases/" + id + "/visits/1", Map.of("s_nprs_worst", "8"));
        Document page = two.submit("/cases/" + id + "/visits/1", Map.of("s_nprs_worst", "3"));
        assertEquals(409, two.status());
        assertTrue(page.text().contains("Stored meanwhile: 8"), page.text());

        one.open("/cases/" + id + "/visits/1");
        two.open("/cases/" + id + "/visits/1");
        one.submit("/cases/" + id + "/visits/1/note", Map.of("plan", "One.", "do", "save"));
        two.submit("/cases/" + id + "/visits/1/note", Map.of("plan", "Two.", "do", "save"));
        assertEquals(409, two.status());
        assertTrue(two.page().text().contains("Stored meanwhile: One."), two.page().text());
    }

    @Test
    void aPlannedVisitCannotBeSigned() {
        long id = cases.open("Gwen", "Mossop-Nairn");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        int second = plan(visitor, id, "18 Mar 2026");
        visitor.open("/cases/" + id + "/visits/" + second);
        Document page = write(visitor, id, second, "sign", Map.of("assessment", "a", "plan", "b"));
        assertEquals(422, visitor.status());
        assertTrue(page.text().contains("Say whether the visit took place"), page.text());
    }

    @Test
    void aFlagThatDemandsACallBarsSigningUntilTheCall() {
        long id = cases.open("Hope", "Tresco-Unwin");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String flags = "/cases/" + id + "/red-flags";
        visitor.open(flags);
        visitor.submit(flags, Map.of("answer.nk_arm_power", "yes"), Map.of("region", List.of("neck")));
        visitor.open("/cases/" + id + "/visits/1");
        Document page = write(visitor, id, 1, "sign", Map.of("assessment", "a", "plan", "b"));
        assertEquals(422, visitor.status());
        assertTrue(page.select("#sign").text().contains("Record the call about"), page.text());
        visitor.open(flags);
        visitor.submit(flags + "/calls", Map.of("called", "Dr A. Demo", "calledRole", "GP", "said", "Told of the arm. Sees her today."));
        visitor.open("/cases/" + id + "/visits/1");
        page = write(visitor, id, 1, "sign", Map.of("assessment", "a", "plan", "b"));
        assertTrue(page.text().contains("Signed by"), page.text());
    }

    @Test
    void aNoteThatIsLongIsKeptWhole() {
        long id = cases.open("Hale", "Nethercott-Orr");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/cases/" + id + "/visits/1");
        String longText = "Bends, lifts and reaches. ".repeat(250).strip();
        Document page = write(visitor, id, 1, "save", Map.of("objective", longText));
        assertEquals(200, visitor.status());
        assertEquals(longText, page.select("#objective").text());
    }

    // an assertion that fails inside must not pass for a refusal
    private static void refused(Runnable forgery) {
        RuntimeException refusal = assertThrows(RuntimeException.class, forgery::run);
        Throwable cause = refusal;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        assertTrue(String.valueOf(cause.getMessage()).contains("cannot be changed or removed"), String.valueOf(cause));
    }

    private VisitNote note(long caseId) {
        return notes.of(visits.numbered(caseId, 1).orElseThrow()).orElseThrow();
    }

    private String noteText(long caseId) {
        return QuarkusTransaction.requiringNew().call(() -> {
            VisitNote note = note(caseId);
            return note.assessment() + note.plan() + note.signedBy() + note.signedAt() + note.version();
        });
    }

    // The persistence layer notices only its own writers, so a forger has to use them.
    private void behindTheBack(VisitNote note, String field, Class<?> type, Object value) {
        try {
            Method writer = VisitNote.class.getDeclaredMethod("$$_hibernate_write_" + field, type);
            writer.setAccessible(true);
            writer.invoke(note, value);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
        db.flush();
    }

    private static int plan(Visitor visitor, long id, String day) {
        visitor.open("/cases/" + id + "/visits");
        visitor.submit("/cases/" + id + "/visits", Map.of("visitedOn", day, "kind", "follow_up"));
        assertEquals(200, visitor.status(), visitor.page().text());
        return 2;
    }

    private static Document review(Visitor visitor, long id, int number, Map<String, String> changes) {
        visitor.open("/cases/" + id + "/visits/" + number);
        return visitor.submit("/cases/" + id + "/visits/" + number, changes);
    }

    private static Document write(Visitor visitor, long id, int number, String act, Map<String, String> changes) {
        Map<String, String> all = new HashMap<>(changes);
        all.put("do", act);
        return visitor.submit("/cases/" + id + "/visits/" + number + "/note", all);
    }
}
