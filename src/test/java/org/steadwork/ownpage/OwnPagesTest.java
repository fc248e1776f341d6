package org.steadwork.ownpage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.OpaqueToken;
import org.steadwork.account.Role;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.Visits;
import org.steadwork.exercise.TestHolds;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** The patient's own page: who gets in, what is stored, what the clinician sees of it. */
@QuarkusTest
class OwnPagesTest {

    private static final String BORN = "3 May 1988";
    private static final Pattern TOKEN = Pattern.compile("/own/([A-Za-z0-9_-]{43})");

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    TestHolds holds;

    @Inject
    EntityManager db;

    @Inject
    Visits visits;

    @Inject
    Statements statements;

    private String path;
    private Visitor clinician;

    @BeforeEach
    void aCaseWithAnExercise() {
        path = "/cases/" + cases.open("Leocadia", "Ownright");
        clinician = accounts.visitor(Role.CLINICIAN);
        clinician.open(path + "/programme/add/sh_rolls");
        clinician.submit(path + "/programme/add/sh_rolls", Map.of("startedOn", "5 Mar 2026"));
        clinician.open(path + "/symptoms/new");
        clinician.submit(path + "/symptoms/new", Map.of("reportedOn", "4 Mar 2026", "now-neck", "2", "worst-neck", "4"), Map.of("zone", List.of("neck")));
        assertEquals(200, clinician.status(), clinician.page().text());
    }

    private String link() {
        clinician.open(path + "/own-page");
        clinician.submit(path + "/own-page/links", Map.of());
        Matcher token = TOKEN.matcher(clinician.page().outerHtml());
        assertTrue(token.find(), clinician.page().text());
        return "/own/" + token.group(1);
    }

    private Visitor patient(String link) {
        Visitor patient = new Visitor();
        patient.open(link);
        patient.submit(link, Map.of("born", BORN));
        assertEquals(200, patient.status());
        assertTrue(patient.page().title().startsWith("Your exercises today"), patient.page().title());
        return patient;
    }

    private Map<String, String> everySession(Visitor patient, String after) {
        Map<String, String> changes = new HashMap<>();
        patient.page().select("select[name^=before_]").forEach(field -> changes.put(field.attr("name"), "2"));
        patient.page().select("select[name^=after_]").forEach(field -> changes.put(field.attr("name"), after));
        return changes;
    }

    private long ticks() {
        return db.createQuery("select count(t) from SessionTick t where t.prescription.caseFile.id = ?1 and t.takenBack = false", Long.class)
                .setParameter(1, Long.valueOf(path.substring("/cases/".length()))).getSingleResult();
    }

    @Test
    void theLinkIsShownOnceAndStoredNowhere() {
        String link = link();
        assertFalse(clinician.page().select("svg[aria-label*=scan]").isEmpty());
        clinician.open(path + "/own-page");
        assertFalse(clinician.page().outerHtml().contains(link));
        assertEquals(0L, db.createQuery("select count(l) from OwnLink l where l.tokenHash = ?1", Long.class).setParameter(1, link.substring("/own/".length())).getSingleResult());
    }

    @Test
    void thePageShowsTheProgrammeAndNothingElseOfTheRecord() {
        Visitor patient = patient(link());
        String page = patient.page().outerHtml();
        assertTrue(page.contains("Shoulder rolls"), page);
        assertFalse(page.contains("Ownright"), "not even the name");
        assertFalse(page.contains("Neck ache"), "nor the complaint");
        patient.open(path);
        assertTrue(patient.page().title().startsWith("Sign in"), "the cookie opens no page of the clinic");
    }

    @Test
    void linksThatDoNotOpenAreAnsweredAlike() {
        String replaced = link();
        String revoked = link();
        String revoke = clinician.page().select("form[action$=/revoke]").attr("action");
        clinician.submit(revoke, Map.of());
        String over = link();
        end(over);
        String locked = link();
        Visitor thief = new Visitor();
        thief.open(locked);
        for (int i = 0; i < OwnLink.TRIES; i++) {
            thief.submit(locked, Map.of("born", "1 Jan 1970"));
            assertEquals(422, thief.status());
        }
        String guessed = "/own/" + "A".repeat(43);
        Map<String, String> answers = new HashMap<>();
        for (String link : List.of(replaced, revoked, over, locked, guessed)) {
            Visitor anybody = new Visitor();
            anybody.open(link);
            assertEquals(404, anybody.status(), link);
            answers.put(anybody.page().select("main").text(), link);
        }
        assertEquals(1, answers.size(), () -> "one answer for all: " + answers);
    }

    @Transactional
    void end(String link) {
        db.createQuery("update OwnLink l set l.expiresOn = ?2 where l.tokenHash = ?1").setParameter(1, OpaqueToken.hash(link.substring("/own/".length())))
                .setParameter(2, LocalDate.now().minusDays(1)).executeUpdate();
    }

    @Test
    void fiveWrongDatesLockTheLinkAndTellToday() {
        String link = link();
        Visitor thief = new Visitor();
        for (int i = 0; i < OwnLink.TRIES; i++) {
            thief.open(link);
            thief.submit(link, Map.of("born", "2 Feb 1972"));
        }
        Visitor patient = new Visitor();
        patient.open(link);
        assertEquals(404, patient.status());
        clinician.open("/");
        assertTrue(clinician.page().text().contains("The own page was locked after 5 wrong dates of birth."), clinician.page().text());
    }

    @Test
    void aDateThatCannotBeReadIsNoTry() {
        String link = link();
        Visitor patient = new Visitor();
        patient.open(link);
        for (int i = 0; i < OwnLink.TRIES + 2; i++) {
            patient.submit(link, Map.of("born", "May 1988"));
            assertEquals(422, patient.status());
        }
        patient(link);
    }

    @Test
    void aDaySentTwiceIsStoredOnceAndAMistakeIsTakenBack() {
        Visitor patient = patient(link());
        List<String> sessions = patient.page().select("input[name=done]").eachAttr("value");
        patient.submit("/own/today", Map.of(), Map.of("done", sessions));
        assertEquals(sessions.size(), ticks());
        patient.submit("/own/today", Map.of(), Map.of("done", sessions));
        assertEquals(sessions.size(), ticks());
        patient.submit("/own/today", Map.of(), Map.of("done", List.of()));
        assertEquals(0, ticks());
    }

    @Test
    void painThatRoseByMoreThanErrorIsToldToThePatientAndToToday() {
        Visitor patient = patient(link());
        List<String> sessions = patient.page().select("input[name=done]").eachAttr("value");
        patient.submit("/own/today", everySession(patient, "3"), Map.of("done", sessions));
        assertTrue(patient.page().select("[role=alert]").isEmpty(), "one point is within the error of the scale");
        patient.submit("/own/today", everySession(patient, "7"), Map.of("done", sessions));
        assertTrue(patient.page().select("[role=alert]").text().contains("nobody watches this page round the clock"), patient.page().text());
        clinician.open("/");
        assertTrue(clinician.page().text().contains("Pain rose from 2 to 7 with an exercise"), clinician.page().text());
        clinician.open(path + "/own-page");
        clinician.submit(path + "/own-page/alarms", Map.of());
        assertFalse(clinician.page().text().contains("Sessions with more pain"));
    }

    @Test
    void painBelongsToItsSessionAndSaysThatItWasDone() {
        Visitor patient = patient(link());
        List<String> sessions = patient.page().select("input[name=done]").eachAttr("value");
        assertTrue(sessions.size() > 1, sessions.toString());
        patient.submit("/own/today", Map.of("before_" + sessions.get(0), "2", "after_" + sessions.get(0), "3"));
        assertEquals(1, ticks(), "pain was told of it, so it was done");
        patient.submit("/own/today", Map.of("before_" + sessions.get(1), "4", "after_" + sessions.get(1), "8"));
        assertEquals(2, ticks());
        assertEquals("3", patient.page().select("select[name=after_" + sessions.get(0) + "] option[selected]").val(), "the later session leaves the earlier as it was");
    }

    @Test
    void theLinkCanBePrintedOnTheSheetAndLaterTheSheetSaysHowItIsReached() {
        clinician.open(path + "/programme/sheet");
        assertFalse(clinician.page().text().contains("Your exercises on your phone"), "there is no link yet");
        clinician.open(path + "/own-page");
        clinician.submit(path + "/own-page/links", Map.of("do", "sheet"));
        assertEquals(200, clinician.status());
        assertEquals(1, clinician.page().select(".handout__card svg[aria-label*=scan]").size());
        assertTrue(TOKEN.matcher(clinician.page().select(".handout__address").text()).find());
        clinician.open(path + "/programme/sheet");
        assertTrue(clinician.page().text().contains("Scan the code on the card you were given"), clinician.page().text());
        assertFalse(TOKEN.matcher(clinician.page().outerHtml()).find(), "the link itself is stored nowhere");
    }

    @Test
    void weeksBeforeTheLinkAreNotKnownRatherThanMissed() {
        Visitor patient = patient(link());
        patient.submit("/own/today", Map.of(), Map.of("done", patient.page().select("input[name=done]").eachAttr("value")));
        clinician.open(path + "/own-page");
        List<String> weeks = clinician.page().select("section[aria-labelledby=s-kept] tbody td").eachText();
        assertEquals(List.of("no page yet", "no page yet", "no page yet"), weeks.subList(0, 3));
        assertTrue(weeks.get(3).contains("0 days without"), weeks.get(3));
    }

    @Test
    void painOutsideTheScaleIsRefusedAtItsFieldAndNothingStored() {
        Visitor patient = patient(link());
        List<String> sessions = patient.page().select("input[name=done]").eachAttr("value");
        patient.submit("/own/today", everySession(patient, "11"), Map.of("done", sessions));
        assertEquals(422, patient.status());
        assertTrue(patient.page().select(".field__error").text().contains("whole number from 0 to 10"));
        assertEquals(0, ticks());
    }

    @Test
    void aReportWaitsForAClinicianAndIsTakenIntoTheCase() {
        Visitor patient = patient(link());
        patient.open("/own/report");
        patient.submit("/own/report", Map.of("now_neck", "2", "worst_neck", "4", "words", "Better after the walk."));
        assertTrue(patient.page().text().contains("has arrived"), patient.page().text());
        assertTrue(patient.page().select("[role=alert]").isEmpty());
        clinician.open(path);
        assertTrue(clinician.page().text().contains("1 report by the patient, not looked at"), clinician.page().text());
        clinician.open(path + "/own-page");
        String action = clinician.page().select("form[action*=/own-page/reports/]").attr("action");
        clinician.submit(action, Map.of("do", "take"));
        assertEquals(200, clinician.status(), clinician.page().text());
        clinician.open(path + "/symptoms");
        assertTrue(clinician.page().outerHtml().contains("Better after the walk."));
        clinician.open(path);
        assertFalse(clinician.page().text().contains("not looked at"));
    }

    @Test
    void aWarningSignTellsThePatientWhatToDoAndTodayToPhone() {
        Visitor patient = patient(link());
        patient.open("/own/report");
        patient.submit("/own/report", Map.of(), Map.of("sign", List.of("now0")));
        assertTrue(patient.page().select("[role=alert]").text().startsWith("Call the emergency number now"), patient.page().text());
        clinician.open("/");
        assertTrue(clinician.page().text().contains("Ticked at home, to call the emergency number for"), clinician.page().text());
    }

    @Test
    void theSameReportSentTwiceStandsOnce() {
        Visitor patient = patient(link());
        for (int i = 0; i < 2; i++) {
            patient.open("/own/report");
            patient.submit("/own/report", Map.of("now_neck", "2"));
        }
        clinician.open(path + "/own-page");
        assertEquals(1, clinician.page().select(".own-report").size());
    }

    @Test
    void questionnairesThatAreDueAreAskedInWordsOfOurOwnAndNoOthers() {
        Visitor patient = patient(link());
        patient.open("/own/report");
        assertEquals(List.of("q_was_1"), patient.page().select("[role=radiogroup][id^=q_]").eachAttr("id"), "work ability is due; change is asked from the third visit on");
        assertTrue(patient.page().text().contains("How well can you do your work now"), patient.page().text());
        assertFalse(patient.page().outerHtml().contains("ompsq"), "the wording of that screen is not ours");
    }

    @Test
    void anAnsweredQuestionnaireWaitsIsTakenOnceAndNeverOverAScoreOfTheDay() {
        Visitor patient = patient(link());
        patient.open("/own/report");
        patient.submit("/own/report", Map.of("q_was_1", "6"));
        assertTrue(patient.page().text().contains("has arrived"), patient.page().text());
        assertEquals(0, scores(), "it counts for nothing yet");
        patient.open("/own/report");
        assertTrue(patient.page().select("[id^=q_]").isEmpty(), "it is not asked twice");
        assertTrue(patient.page().text().contains("waiting for your physiotherapist: Your work"), patient.page().text());
        clinician.open(path + "/own-page");
        assertTrue(clinician.page().text().contains("Work ability (0-10): 6, moderate"), clinician.page().text());
        String action = clinician.page().select("form[action*=/own-page/reports/]").attr("action");
        score("8");
        clinician.open(path + "/own-page");
        clinician.submit(action, Map.of("do", "take"));
        assertEquals(422, clinician.status());
        assertTrue(clinician.page().select(".field__error").text().contains("a score of Work ability of"), clinician.page().text());
        score("");
        clinician.open(path + "/own-page");
        clinician.submit(action, Map.of("do", "take"));
        assertEquals(200, clinician.status(), clinician.page().text());
        assertEquals("6", db.createQuery("select s.answers from Score s where s.caseFile.id = ?1 and s.recordedBy like 'Patient, looked at by %'", String.class).setParameter(1, id()).getSingleResult());
    }

    private long id() {
        return Long.parseLong(path.substring("/cases/".length()));
    }

    private long scores() {
        return db.createQuery("select count(s) from Score s where s.caseFile.id = ?1", Long.class).setParameter(1, id()).getSingleResult();
    }

    @Transactional
    void score(String answer) {
        if (answer.isEmpty()) {
            db.createQuery("delete from Score s where s.caseFile.id = ?1").setParameter(1, id()).executeUpdate();
        } else {
            clinician.open(path + "/outcomes/was");
            clinician.submit(path + "/outcomes/was", Map.of("i1", answer));
            assertEquals(200, clinician.status(), clinician.page().text());
        }
    }

    @Test
    void anAnswerOffItsScaleIsRefusedAtItsQuestionAndNothingIsLost() {
        Visitor patient = patient(link());
        patient.open("/own/report");
        String sending = patient.page().select("[name=sending]").val();
        patient.submit("/own/report", Map.of("q_was_1", "11", "now_neck", "2", "words", "A long week."));
        assertEquals(422, patient.status());
        assertTrue(patient.page().select("#q_was_1-error").text().contains("whole number from 0 to 10"), patient.page().text());
        assertEquals("A long week.", patient.page().select("[name=words]").val());
        assertEquals(sending, patient.page().select("[name=sending]").val(), "put right, it is the same sending");
    }

    @Test
    void aSendingThatArrivesTwiceStandsOnceWhateverBecameOfTheFirst() {
        Visitor patient = patient(link());
        patient.open("/own/report");
        String sending = patient.page().select("[name=sending]").val();
        patient.submit("/own/report", Map.of("q_was_1", "6"));
        clinician.open(path + "/own-page");
        clinician.submit(clinician.page().select("form[action*=/own-page/reports/]").attr("action"), Map.of("do", "take"));
        patient.open("/own/report");
        patient.submit("/own/report", Map.of("sending", sending, "q_was_1", "6"));
        assertEquals(200, patient.status());
        clinician.open(path + "/own-page");
        assertTrue(clinician.page().select(".own-report").isEmpty(), "it was taken already");
    }

    @Test
    void theDayTheyFilledItInIsKeptAndADayLongAgoIsNot() {
        Visitor patient = patient(link());
        LocalDate today = LocalDate.now();
        patient.open("/own/report");
        patient.submit("/own/report", Map.of("words", "Kept without reception.", "day", today.minusDays(2).toString()));
        patient.open("/own/report");
        patient.submit("/own/report", Map.of("words", "Kept for too long.", "day", today.minusDays(30).toString()));
        assertEquals(List.of(today.minusDays(2), today), db.createQuery("select r.reportedOn from OwnReport r where r.caseFile.id = ?1 order by r.reportedOn", LocalDate.class)
                .setParameter(1, id()).getResultList());
    }

    @Test
    void whatGotWorseIsToldToThePatientAndToToday() {
        visits(3);
        Visitor patient = patient(link());
        patient.open("/own/report");
        assertEquals(List.of("q_was_1", "q_groc15_1"), patient.page().select("[role=radiogroup][id^=q_]").eachAttr("id"));
        assertTrue(patient.page().text().contains("Against 4 Mar 2026, when you first came"), patient.page().text());
        patient.submit("/own/report", Map.of("q_groc15_1", "-1"));
        assertTrue(patient.page().select("[role=alert]").isEmpty(), "−1 still says unchanged");
        patient.open("/own/report");
        note();
        patient.open("/own/report");
        patient.submit("/own/report", Map.of("q_groc15_1", "-4"));
        assertTrue(patient.page().select("[role=alert]").text().contains("You say it is clearly worse"), patient.page().text());
        assertTrue(patient.page().select("[role=alert]").text().contains("Nobody watches this page round the clock"), patient.page().text());
        clinician.open("/");
        assertTrue(clinician.page().text().contains("Reported from home: Overall change, 15 points −4, in the patient’s own word. Worse."), clinician.page().text());
    }

    private void note() {
        clinician.open(path + "/own-page");
        clinician.submit(clinician.page().select("form[action*=/own-page/reports/]").attr("action"), Map.of("do", "note", clinician.page().select("input[name^=note]").attr("name"), "Talked about it."));
        assertEquals(200, clinician.status(), clinician.page().text());
    }

    @Transactional
    void visits(int held) {
        CaseFile file = db.find(CaseFile.class, id());
        for (int i = 2; i <= held; i++) {
            visits.add(file, TestCases.OPENED.plusWeeks(i), VisitKind.FOLLOW_UP, Attendance.ATTENDED);
        }
    }

    @Test
    void ownActivitiesThatFellByMoreThanErrorAreWorse() {
        for (String words : List.of("Carry the bag", "Type for an hour")) {
            clinician.open(path + "/outcomes");
            clinician.submit(path + "/own-activities", Map.of("newActivity", words, "newRating", "7"));
            assertEquals(200, clinician.status(), clinician.page().text());
        }
        Visitor patient = patient(link());
        patient.open("/own/report");
        Map<String, String> fell = new HashMap<>();
        patient.page().select("[role=radiogroup][id^=activity_]").forEach(group -> fell.put(group.id(), "3"));
        assertEquals(2, fell.size());
        patient.submit("/own/report", fell);
        assertTrue(patient.page().select("[role=alert]").text().contains("You say it is clearly worse"), patient.page().text());
        clinician.open(path + "/own-page");
        assertTrue(clinician.page().text().contains("Worse: Own activities (PSFS) 7 to 3."), clinician.page().text());
        String action = clinician.page().select("form[action*=/own-page/reports/]").attr("action");
        clinician.submit(action, Map.of("do", "take"));
        assertTrue(clinician.page().select(".field__error").text().contains("ratings of the own activities of"), "they were rated today in the clinic");
    }

    @Test
    void theReportIsMadeOfAFixedCountOfQueries() {
        Visitor patient = patient(link());
        patient.open("/own/report");
        long before = statements.during(() -> patient.open("/own/report"));
        for (String words : List.of("Carry the bag", "Type for an hour", "Drive home")) {
            clinician.open(path + "/outcomes");
            clinician.submit(path + "/own-activities", Map.of("newActivity", words, "newRating", "7"));
        }
        for (int i = 0; i < 4; i++) {
            patient.open("/own/report");
            patient.submit("/own/report", Map.of("words", "Report " + i));
        }
        assertEquals(before, statements.during(() -> patient.open("/own/report")));
    }

    @Test
    void onlyNotingNeedsAWord() {
        Visitor patient = patient(link());
        patient.open("/own/report");
        patient.submit("/own/report", Map.of("now_neck", "2"));
        clinician.open(path + "/own-page");
        String action = clinician.page().select("form[action*=/own-page/reports/]").attr("action");
        clinician.submit(action, Map.of("do", "note"));
        assertEquals(422, clinician.status());
        assertTrue(clinician.page().select(".field__error").text().contains("Say what you did with it"));
    }

    @Test
    void theWeekBecomesTheAdherenceThatReviewsShow() {
        Visitor patient = patient(link());
        List<String> sessions = patient.page().select("input[name=done]").eachAttr("value");
        patient.submit("/own/today", everySession(patient, "3"), Map.of("done", sessions));
        clinician.open(path + "/own-page");
        clinician.submit(path + "/own-page/week", Map.of());
        assertTrue(clinician.page().text().contains(sessions.size() + " of "), clinician.page().text());
    }

    @Test
    void theReviewShowsWhatWasTickedWithItsGaps() {
        Visitor patient = patient(link());
        List<String> sessions = patient.page().select("input[name=done]").eachAttr("value");
        patient.submit("/own/today", everySession(patient, "3"), Map.of("done", sessions));
        clinician.open(path + "/visits");
        clinician.submit(path + "/visits", Map.of("visitedOn", LocalDate.now().toString()));
        String review = clinician.page().text();
        assertTrue(review.contains("Ticked at home"), review);
        assertTrue(review.contains("Shoulder rolls"), review);
        assertTrue(review.matches("(?s).*Shoulder rolls[^:]*: " + sessions.size() + " of \\d+ sessions, (every day|nothing on \\d of \\d days?), pain after up to 3.*"), review);
    }

    @Test
    void sessionsOfWhatWasSuspendedOrEndedMeanwhileAreKeptAndMarked() {
        Visitor patient = patient(link());
        List<String> sessions = patient.page().select("input[name=done]").eachAttr("value");
        long id = Long.parseLong(path.substring("/cases/".length()));
        holds.suspend(id, "all_treatment", Set.of(BodyRegion.NECK), "A test holds it back");
        patient.submit("/own/today", everySession(patient, "4"), Map.of("done", sessions));
        assertEquals(200, patient.status());
        assertEquals(sessions.size(), ticks(), "nothing told is lost");
        String page = clinician.open(path + "/own-page").text();
        assertTrue(page.contains("Done though it was suspended or ended"), page);
        assertTrue(page.contains("suspended by a red flag: pain after 4"), page);
        patient.open("/own/today");
        assertTrue(patient.page().select("input[name=done]").isEmpty(), "what is suspended is not offered");
    }

    @Test
    void aSessionOfAnotherCaseOrOfNoExerciseIsNotTaken() {
        Visitor patient = patient(link());
        patient.submit("/own/today", Map.of(), Map.of("done", List.of("999999999-1", "1-0", "x", "999999999999999999999-1")));
        assertEquals(200, patient.status());
        assertEquals(0, ticks());
    }

    @Test
    void aPhoneThatClosedThePageIsNoLongerLetIn() {
        Visitor patient = patient(link());
        patient.submit("/own", Map.of());
        patient.open("/own/today");
        assertTrue(patient.page().text().contains("Your page is closed"));
    }
}
