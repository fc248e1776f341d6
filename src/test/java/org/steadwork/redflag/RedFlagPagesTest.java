package org.steadwork.redflag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseHeads;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.Visits;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.redflag.rules.Verdict;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class RedFlagPagesTest {

    private static final Map<String, List<String>> NECK = Map.of("region", List.of("neck"));

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    RedFlags redFlags;

    @Inject
    Suspensions suspensions;

    @Inject
    SigningBars bars;

    @Inject
    Flags flags;

    @Inject
    CaseHeads heads;

    @Inject
    RedFlagRail rail;

    @Inject
    DischargeBars discharge;

    @Inject
    Visits visits;

    @Inject
    EntityManager db;

    private long id;
    private Visitor clinician;

    @BeforeEach
    void openCase() {
        id = cases.open("Quillon", "Marbeck-" + System.nanoTime());
        clinician = accounts.visitor(Role.CLINICIAN);
    }

    @Test
    void eachPageIsForCliniciansOnly() {
        answerDue(Map.of("answer.nk_cord_hands", "yes"));
        List<String> paths = List.of(page(), page() + "/safety-net", page() + "/flags/" + flag("nk_cord_hands").id(),
                page() + "/screens/" + screenId());
        for (String path : paths) {
            for (Role role : List.of(Role.CLINICIAN, Role.LEAD)) {
                Visitor allowed = accounts.visitor(role);
                allowed.open(path);
                assertEquals(200, allowed.status(), role + " " + path);
            }
            Visitor assistant = accounts.visitor(Role.ASSISTANT);
            assistant.open(path);
            assertEquals(403, assistant.status(), path);
            Visitor nobody = new Visitor();
            nobody.open(path);
            assertTrue(nobody.page().title().startsWith("Sign in"), path);
        }
    }

    @Test
    void anAssistantCannotPost() {
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        assistant.open("/patients/new");
        String token = assistant.page().select("input[name=csrf-token]").val();
        for (String path : List.of("", "/calls", "/screens")) {
            assistant.post(page() + path, Map.of("csrf-token", List.of(token)));
            assertEquals(403, assistant.status(), path);
        }
    }

    @Test
    void aPostWithoutTokenIsRefused() {
        clinician.open(page());
        clinician.post(page(), Map.of("screen", List.of("new"), "version", List.of("0")));
        assertEquals(400, clinician.status());
        assertEquals(Optional.empty(), status().screenedOn());
    }

    @Test
    void anUnaskedCaseSaysSoAndIsNotClear() {
        clinician.open(page());
        assertEquals("Not asked yet", result());
        assertEquals(Verdict.INCOMPLETE, status().verdict());
        assertTrue(clinician.page().select(".rail").text().contains("not asked"));
    }

    @Test
    void everyAnswerOfAnUntouchedQuestionIsNotAsked() {
        clinician.open(page());
        assertTrue(clinician.page().select(".choice").size() > 60);
        assertEquals(clinician.page().select(".choice").size(), clinician.page().select(".choice input[value=not_asked][checked]").size());
    }

    @Test
    void allNoAndSignedIsClear() {
        answerDue(Map.of());
        assertEquals(Verdict.INCOMPLETE, status().verdict(), "not signed yet");
        assertEquals("All no, not signed", result());
        sign();
        assertEquals(Verdict.CLEAR, status().verdict());
        assertTrue(result().startsWith("Clear on"), result());
        assertEquals(Set.of(), inForce());
    }

    @Test
    void noDueQuestionClearsTheScreenByUnknownOrNotAsked() {
        answerDue(Map.of());
        sign();
        List<String> due = clinician.open(page() + "/screens/" + screenId()).select("section[aria-label=No] li").eachText();
        assertTrue(due.size() > 15, "questions of the neck: " + due.size());
        for (String open : List.of("unknown", "not_asked")) {
            openCase();
            answerDue(Map.of("answer.gen_weight_loss", open));
            assertNotEquals(Verdict.CLEAR, status().verdict(), open);
            sign();
            assertNotEquals(Verdict.CLEAR, status().verdict(), open + ", signed");
            // a short set with every answer no does not clear what was left open
            beginReview();
            answerDue(Map.of("answer.gen_weight_loss", open));
            sign();
            assertNotEquals(Verdict.CLEAR, status().verdict(), open + ", at review");
        }
    }

    @Test
    void declinedIsStoredAsUnknownAndTreatedAsPositive() {
        answerDue(Map.of("answer.gen_chest_now", "no", "declined.answer.gen_chest_now", "yes"));
        assertEquals(Verdict.INCOMPLETE, status().verdict());
        assertEquals(Optional.of(Urgency.EMERGENCY_NOW), status().highestOpen());
        assertTrue(result().startsWith("Unknown, treated as positive"), result());
        assertTrue(inForce().contains("all_treatment"));
    }

    @Test
    void cordSignsSuspendNeckCareAndBarSigningUntilACallIsRecorded() {
        cordSigns();
        assertEquals(Verdict.POSITIVE, status().verdict());
        assertEquals(Optional.of(Urgency.SAME_DAY), status().highestOpen());
        assertEquals("Positive: medical assessment today", result());
        assertTrue(inForce().containsAll(Set.of("neck_manipulation", "neck_traction", "neck_end_range", "nerve_glides")));
        assertFalse(bars().isEmpty());
        assertTrue(clinician.page().select(".rail__cautions--stop").size() == 1);
        recordCall();
        assertEquals(200, clinician.status());
        assertEquals(List.of(), bars());
        assertTrue(clinician.page().select(".timeline").text().contains("Dr A. Demo"));
    }

    @Test
    void aCallWithMistakesIsAnsweredAtTheFieldAndKept() {
        cordSigns();
        clinician.submit(page() + "/calls", Map.of("called", "Dr A. Demo", "calledTime", "soon", "said", ""));
        assertEquals(422, clinician.status());
        assertEquals("Dr A. Demo", clinician.page().select("#called").val());
        assertTrue(clinician.page().select("#calledTime-error").text().contains("for example 11:40"));
        assertEquals("true", clinician.page().select("#said").attr("aria-invalid"));
        assertFalse(bars().isEmpty());
    }

    @Test
    void anUnknownThatBecomesASureYesAsksForACallOfItsOwn() {
        answerDue(Map.of("answer.nk_arm_power", "unknown"));
        assertFalse(flag("nk_arm_power").certain());
        recordCall();
        assertEquals(List.of(), bars());
        answerDue(Map.of("answer.nk_arm_power", "yes"));
        assertTrue(flag("nk_arm_power").certain());
        assertFalse(bars().isEmpty(), "the call was about an answer that was not known");
        clinician.open(page());
        recordCall();
        assertEquals(List.of(), bars());
        answerDue(Map.of("answer.nk_arm_power", "yes"));
        assertEquals(List.of(), bars(), "saving the same answer once more asks nothing new");
    }

    @Test
    void aLevelLoweredWhileTheAnswerWasUnknownRisesWhenItBecomesSure() {
        answerDue(Map.of("answer.nk_arm_power", "unknown"));
        Urgency found = flag("nk_arm_power").urgency();
        recordCall();
        level("nk_arm_power", Map.of("level", "watch", "levelReason", "Asked the doctor: wait for the second look."));
        assertEquals(Urgency.WATCH, flag("nk_arm_power").urgency());
        answerDue(Map.of("answer.nk_arm_power", "yes"));
        assertEquals(found, flag("nk_arm_power").urgency());
        assertFalse(bars().isEmpty());
    }

    @Test
    void aFlagClosedWhileUnknownIsRaisedAnewByASureYesOnTheSameScreen() {
        answerDue(Map.of("answer.nk_arm_power", "unknown"));
        recordCall();
        close("nk_arm_power");
        answerDue(Map.of("answer.nk_arm_power", "unknown"));
        assertEquals(1, all().stream().filter(flag -> flag.origin().equals("nk_arm_power")).count(), "nothing new was answered");
        answerDue(Map.of("answer.nk_arm_power", "yes"));
        assertTrue(all().stream().anyMatch(flag -> flag.origin().equals("nk_arm_power") && flag.open() && flag.certain()));
    }

    @Test
    void anOlderScreenInTheHistoryIsNotCalledOutOfDate() {
        answerDue(Map.of());
        sign();
        QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery("update red_flag_screen set screened_on = ?1 where case_file_id = ?2")
                .setParameter(1, LocalDate.now().minusDays(redFlags.validDays() + 1L)).setParameter(2, id).executeUpdate());
        assertTrue(clinician.open(page()).select("#result").text().equals("Out of date"), result());
        beginReview();
        answerDue(Map.of());
        sign();
        Document seen = clinician.open(page());
        assertTrue(seen.select("section[aria-labelledby=history] tbody tr").size() == 2, seen.text());
        assertFalse(seen.text().toLowerCase().contains("out of date"), seen.text());
    }

    @Test
    void aLaterNoDoesNotCloseAnEarlierYes() {
        answerDue(Map.of("answer.nk_arm_power", "yes"));
        answerDue(Map.of("answer.nk_arm_power", "no"));
        assertTrue(flag("nk_arm_power").open());
        assertEquals(Verdict.POSITIVE, status().verdict());
        sign();
        beginReview();
        answerDue(Map.of());
        sign();
        assertTrue(flag("nk_arm_power").open());
        assertEquals(Verdict.POSITIVE, status().verdict());
    }

    @Test
    void aFlagIsClosedOnlyWithNameReasonSeenByAndDate() {
        cordSigns();
        recordCall();
        String close = page() + "/flags/" + flag("nk_cord_signs").id();
        clinician.open(close);
        clinician.submit(close + "/close", Map.of());
        assertEquals(422, clinician.status());
        for (String field : List.of("seenBy", "seenOn", "closeReason")) {
            assertEquals("true", clinician.page().select("#" + field).attr("aria-invalid"), field);
        }
        assertTrue(flag("nk_cord_signs").open());
        close("nk_cord_signs");
        assertFalse(flag("nk_cord_signs").open());
        assertEquals("Test Clinician", flag("nk_cord_signs").closedBy().fullName());
    }

    @Test
    void flagsThatOneLookSettledAreClosedTogether() {
        cordSigns();
        recordCall();
        String path = page() + "/flags/" + flag("CL-CORD-2").id();
        List<String> others = clinician.open(path).select("input[name=also]").eachAttr("value");
        assertTrue(others.size() >= 3, "the three answers behind the rule: " + others);
        clinician.submit(path + "/close", Map.of("seenBy", "Dr A. Demo", "seenOn", today(), "closeReason", "assessed, report on file"),
                Map.of("also", List.of(others.get(0), others.get(1))));
        assertEquals(List.of(flag("CL-CORD-2").id() + "", others.get(0).split(":")[0], others.get(1).split(":")[0]).stream().sorted().toList(),
                all().stream().filter(flag -> !flag.open()).map(flag -> flag.id().toString()).sorted().toList());
    }

    @Test
    void aFlagChangedMeanwhileIsNotClosedTogether() {
        cordSigns();
        recordCall();
        String path = page() + "/flags/" + flag("CL-CORD-2").id();
        String other = clinician.open(path).select("input[name=also]").first().val();
        String stale = other.split(":")[0] + ":99";
        clinician.submit(path + "/close", Map.of("seenBy", "Dr A. Demo", "seenOn", today(), "closeReason", "seen"), Map.of("also", List.of(stale)));
        assertEquals(422, clinician.status());
        assertTrue(all().stream().allMatch(Flag::open));
    }

    @Test
    void aFlagThatDemandsACallIsNotClosedWithoutOne() {
        answerDue(Map.of("answer.nk_arm_power", "yes"));
        String path = page() + "/flags/" + flag("nk_arm_power").id();
        clinician.open(path);
        clinician.submit(path + "/close", Map.of("seenBy", "Dr A. Demo", "seenOn", today(), "closeReason", "seen"));
        assertEquals(422, clinician.status());
        assertTrue(flag("nk_arm_power").open());
    }

    @Test
    void neckThrustStaysBarredAfterCordSignsAreClosed() {
        cordSigns();
        recordCall();
        all().stream().filter(Flag::open).map(Flag::origin).toList().forEach(this::close);
        assertEquals(Optional.empty(), status().highestOpen());
        assertEquals(Set.of("neck_manipulation"), inForce());
        assertTrue(clinician.open(page()).select("#held").size() == 1);
        assertTrue(clinician.page().text().contains("barred for good"));
    }

    @Test
    void raisingIsFreeAndLoweringNeedsAReason() {
        answerDue(Map.of("answer.nk_cord_hands", "yes"));
        level("nk_cord_hands", Map.of("level", "same_day"));
        assertEquals(Urgency.SAME_DAY, flag("nk_cord_hands").urgency());
        assertFalse(bars().isEmpty(), "the raised level demands a call");
        clinician.open(page());
        recordCall();
        level("nk_cord_hands", Map.of("level", "discuss_doctor"));
        assertEquals(422, clinician.status());
        assertEquals(Urgency.SAME_DAY, flag("nk_cord_hands").urgency());
        level("nk_cord_hands", Map.of("level", "discuss_doctor", "levelReason", "Spinal service advises routine letter"));
        assertEquals(Urgency.DISCUSS_DOCTOR, flag("nk_cord_hands").urgency());
        assertTrue(clinician.open(page()).text().contains("Spinal service advises routine letter"));
    }

    @Test
    void aStaleSaveIsRefusedAndShowsBoth() {
        answerDue(Map.of());
        Visitor other = accounts.visitor(Role.LEAD);
        other.open(page());
        answerDue(Map.of("answer.gen_weight_loss", "yes"));
        other.submit(page(), Map.of("answer.gen_weight_loss", "no", "note.answer.gen_weight_loss", "mine"));
        assertEquals(409, other.status());
        assertTrue(other.page().text().contains("Somebody saved this in between"));
        assertEquals("mine", other.page().select("input[name=note.answer.gen_weight_loss]").val());
        assertTrue(flag("gen_weight_loss").open());
    }

    @Test
    void aSecondFirstScreenIsRefused() {
        Visitor other = accounts.visitor(Role.LEAD);
        other.open(page());
        answerDue(Map.of());
        other.submit(page(), Map.of());
        assertEquals(409, other.status());
    }

    @Test
    void aSignedScreenStaysAsItIs() {
        answerDue(Map.of());
        Visitor other = accounts.visitor(Role.LEAD);
        other.open(page());
        sign();
        other.submit(page(), Map.of("answer.gen_weight_loss", "yes"));
        assertEquals(409, other.status());
        assertTrue(clinician.open(page()).select("form[action=" + page() + "]").isEmpty());
    }

    @Test
    void anAnswerNotOfferedIsRefused() {
        clinician.open(page());
        clinician.submit(page(), Map.of("answer.gen_weight_loss", "maybe"));
        assertEquals(422, clinician.status());
        assertEquals(Optional.empty(), status().screenedOn());
    }

    @Test
    void storedAnswersAreShownAsTheyWereGiven() {
        answerDue(Map.of("answer.gen_weight_loss", "unknown", "answer.nk_cord_hands", "yes", "note.answer.nk_cord_hands", "six weeks"));
        clinician.open(page());
        assertEquals("unknown", clinician.page().select("input[name=answer.gen_weight_loss][checked]").val());
        assertEquals("yes", clinician.page().select("input[name=answer.nk_cord_hands][checked]").val());
        assertEquals("no", clinician.page().select("input[name=answer.gen_night_pain][checked]").val());
        assertEquals("six weeks", clinician.page().select("input[name=note.answer.nk_cord_hands]").val());
        assertTrue(clinician.page().select(".question--yes .question__words").text().contains("clumsy"));
    }

    @Test
    void aScreenIsOutOfDateAfterTheSetDays() {
        assertFalse(redFlags.outOfDate(LocalDate.now().minusDays(redFlags.validDays())));
        assertTrue(redFlags.outOfDate(LocalDate.now().minusDays(redFlags.validDays() + 1L)));
    }

    @Test
    void aRegionReportedAtAReviewReopensTheScreenAndIsAskedInFull() {
        answerDue(Map.of());
        sign();
        assertEquals(Verdict.CLEAR, status().verdict());
        String report = "/cases/" + id + "/symptoms/new";
        clinician.open(report);
        clinician.submit(report, Map.of("now-knee_r", "3"), Map.of("zone", List.of("knee_r")));
        assertEquals(200, clinician.status(), clinician.page().select("[role=alert]").text());
        assertEquals(Verdict.INCOMPLETE, status().verdict(), "the knee was not asked about");
        assertTrue(clinician.open("/").text().contains("Reported since the last red-flag screen: knee"),
                clinician.page().text());
        assertTrue(clinician.open(page()).select("#result").text().startsWith("Incomplete"), result());
        beginReview();
        List<String> due = clinician.open(page()).select(".question").stream().filter(row -> row.closest(".red-flag-others") == null).map(row -> row.id()).toList();
        assertTrue(due.contains("answer.kn_locked"), "a first-visit question of the new region: " + due);
        assertFalse(due.contains("answer.nk_trauma"), "the neck was asked in full before: " + due);
        answerDue(Map.of());
        sign();
        assertEquals(Verdict.CLEAR, status().verdict());
    }

    @Test
    void aCaseWithAnUrgentFlagOpenIsNotClosed() {
        answerDue(Map.of("answer.nk_cord_hands", "yes"));
        List<String> closing = QuarkusTransaction.requiringNew().call(() -> rail.closingBars(heads.find(id)));
        assertTrue(closing.toString().contains("clumsy hands"), closing.toString());
    }

    /** Safety rule 8: the questions are asked again before discharge; the visit of the case was long ago. */
    @Test
    void aDischargeWaitsUntilTheQuestionsWereAskedAtTheLastVisitAndTheScreenIsSigned() {
        assertTrue(discharge().toString().contains("Ask the red-flag questions again before the discharge"), discharge().toString());
        answerDue(Map.of());
        assertTrue(discharge().toString().contains("Sign the red-flag screen"), discharge().toString());
        sign();
        assertEquals(List.of(), discharge());
        QuarkusTransaction.requiringNew().run(() -> visits.add(db.getReference(CaseFile.class, id), LocalDate.now().plusDays(1), VisitKind.DISCHARGE, Attendance.ATTENDED));
        assertTrue(discharge().toString().contains("the last time was"), discharge().toString());
        clinician.open("/cases/" + id + "/close");
        assertTrue(clinician.page().text().contains("Ask the red-flag questions again before the discharge"), clinician.page().text());
    }

    @Test
    void anUrgentFlagHoldsTheDischargeUntilItsReceiverTookThePatientOver() {
        cordSigns();
        sign();
        assertTrue(discharge().toString().contains("Not closed yet"), discharge().toString());
        recordCall();
        assertFalse(discharge().isEmpty(), "told is not accepted");
        clinician.submit(page() + "/calls", Map.of("called", "Dr A. Demo", "said", "Takes her over.", "accepted", "yes"));
        assertEquals(200, clinician.status());
        assertTrue(clinician.page().select(".timeline").text().contains("Took the patient over."), clinician.page().select(".timeline").text());
        assertEquals(List.of(), discharge());
        level("nk_cord_hands", Map.of("level", "emergency_now"));
        assertTrue(discharge().toString().contains("clumsy hands"), "what got worse since was not accepted: " + discharge());
    }

    @Test
    void theNoteOfADischargeVisitWaitsForTheSameThings() {
        int number = QuarkusTransaction.requiringNew().call(() -> visits.add(db.getReference(CaseFile.class, id), LocalDate.now(), VisitKind.DISCHARGE,
                Attendance.ATTENDED).number());
        assertTrue(clinician.open("/cases/" + id + "/visits/" + number).text().contains("Ask the red-flag questions again before the discharge"),
                clinician.page().text());
        answerDue(Map.of());
        sign();
        assertFalse(clinician.open("/cases/" + id + "/visits/" + number).text().contains("before the discharge"), clinician.page().text());
    }

    @Test
    void anEarlierDayDoesNotKnowWhatWasAskedAndFoundLater() {
        answerDue(Map.of("answer.nk_cord_hands", "yes"));
        assertEquals(Verdict.POSITIVE, status().verdict());
        CaseStatus before = QuarkusTransaction.requiringNew().call(() -> redFlags.status(id, LocalDate.now().minusDays(1)));
        assertEquals(Verdict.INCOMPLETE, before.verdict());
        assertTrue(before.screenedOn().isEmpty() && before.highestOpen().isEmpty(), before.toString());
        assertEquals(status(), QuarkusTransaction.requiringNew().call(() -> redFlags.status(id, LocalDate.now())));
    }

    @Test
    void noMeaningfulChangeAsksForTheFullScreenAgain() {
        answerDue(Map.of("answer.fact_no_change_6_weeks", "yes"));
        assertTrue(clinician.open(page()).select(".red-flag-result").text().contains("Repeat the full screen"));
    }

    @Test
    void theSafetyNetSheetNamesTheSignsOfTheRegion() {
        answerDue(Map.of());
        String sheet = clinician.open(page() + "/safety-net").text();
        assertTrue(sheet.contains("do this, today, and do not wait for your next visit"));
        assertTrue(sheet.contains("clumsy with buttons"));
        assertFalse(sheet.contains("round the genitals"));
    }

    @Test
    void todayShowsTheFlagUntilTheCallAndAfterIt() {
        cordSigns();
        String href = page();
        assertTrue(clinician.open("/").select("section[aria-labelledby=now] a[href=" + href + "]").text().startsWith("Record the call"));
        clinician.open(page());
        recordCall();
        assertTrue(clinician.open("/").select("section[aria-labelledby=due] a[href=" + href + "]").text().startsWith("Record who saw them"));
    }

    private String page() {
        return "/cases/" + id + "/red-flags";
    }

    private String result() {
        return clinician.page().select("#result").text();
    }

    private String screenId() {
        return clinician.open(page()).select(".table a[href*=/screens/]").attr("href").replaceAll(".*/", "");
    }

    private static String today() {
        return LocalDate.now().toString();
    }

    /** Answers every question that is due with no, as a clinician would, then what is given here. */
    private void answerDue(Map<String, String> answers) {
        clinician.open(page());
        for (int pass = 0; pass < 2; pass++) {
            Map<String, String> changes = new LinkedHashMap<>();
            clinician.page().select("form[action=" + page() + "] .question").stream().filter(row -> row.closest(".red-flag-others") == null)
                    .filter(row -> row.closest(".red-flag-rule") == null)
                    .forEach(row -> changes.put(row.id(), "no"));
            changes.putAll(answers);
            clinician.submit(page(), changes, NECK);
        }
        assertEquals(200, clinician.status());
    }

    private void cordSigns() {
        answerDue(Map.of("answer.nk_cord_hands", "yes", "answer.nk_cord_gait", "yes", "answer.nk_cord_signs", "yes"));
    }

    private void sign() {
        clinician.open(page());
        String sign = clinician.page().select("form.sign").attr("action");
        clinician.submit(sign, Map.of());
        assertEquals(200, clinician.status());
    }

    private void beginReview() {
        clinician.open(page());
        clinician.submit(page() + "/screens", Map.of("occasion", "review"));
        assertEquals(200, clinician.status());
    }

    private void recordCall() {
        clinician.submit(page() + "/calls", Map.of("called", "Dr A. Demo", "calledRole", "GP", "said", "Told of hands and walking. Sends her up."));
    }

    private void close(String origin) {
        String path = page() + "/flags/" + flag(origin).id();
        clinician.open(path);
        clinician.submit(path + "/close", Map.of("seenBy", "Dr A. Demo", "seenOn", today(), "closeReason", "assessed, report on file"));
        assertEquals(200, clinician.status(), origin);
    }

    private void level(String origin, Map<String, String> changes) {
        String path = page() + "/flags/" + flag(origin).id();
        clinician.open(path);
        clinician.submit(path + "/level", changes);
    }

    // the test's own session would show what it read earlier: each look has one of its own

    private CaseStatus status() {
        return QuarkusTransaction.requiringNew().call(() -> redFlags.status(id));
    }

    private Set<String> inForce() {
        return QuarkusTransaction.requiringNew().call(() -> suspensions.inForce(id));
    }

    private List<String> discharge() {
        return QuarkusTransaction.requiringNew().call(() -> discharge.of(heads.find(id)));
    }

    private List<String> bars() {
        return QuarkusTransaction.requiringNew().call(() -> bars.forVisit(id));
    }

    private List<Flag> all() {
        return QuarkusTransaction.requiringNew().call(() -> flags.of(id));
    }

    private Flag flag(String origin) {
        return all().stream().filter(flag -> flag.origin().equals(origin)).findFirst().orElseThrow();
    }
}
