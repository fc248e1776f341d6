package org.steadwork.worklist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.AttentionRules;
import org.steadwork.casefile.CaseScope;
import org.steadwork.web.TestCases;

/**
 * Each rule with a case that just meets it and one that just does not. Where a bound is published it is named; the others are common
 * practice or proposals, as the content says. Worse and standstill have their own test beside their arithmetic (outcome).
 */
@QuarkusTest
class RulesMetTest {

    private static final LocalDate OPENED = TestCases.OPENED;
    private static final Set<String> MET = new HashSet<>(Set.of("got_worse", "standstill"));

    @Inject
    RuleCases cases;

    @Inject
    AttentionRules rules;

    @Inject
    @Any
    Instance<Attention> beans;

    private static Set<String> all;

    private List<Attention.Entry> of(long id, LocalDate day) {
        all = new TreeSet<>(rules.all().stream().map(rule -> rule.key()).toList());
        return QuarkusTransaction.requiringNew().call(() -> beans.stream().flatMap(bean -> bean.entries(day, CaseScope.one(id)).stream()).toList());
    }

    /** Met where meetings, break-glass and people without a case are tested: {@code MeetingPagesTest}, {@code RoutesByCareTeamTest}, {@code NewcomersTest}. */
    private static final Set<String> ELSEWHERE = Set.of("newcomer", "break_glass", "meeting_action_due", "meeting_action_overdue", "meeting_advised");

    private Attention.Entry met(String rule, long id, LocalDate day) {
        List<Attention.Entry> entries = of(id, day);
        List<Attention.Entry> found = entries.stream().filter(entry -> entry.rule().key().equals(rule)).toList();
        assertEquals(1, found.size(), () -> rule + " on " + day + ": " + entries.stream().map(entry -> entry.rule().key() + " " + entry.reason()).toList());
        MET.add(rule);
        assertTrue(found.get(0).since().compareTo(day) <= 0, "it stands open since a day that has come");
        assertTrue(!found.get(0).reason().contains("{") && !found.get(0).label().contains("{"), found.get(0).reason());
        return found.get(0);
    }

    private void not(String rule, long id, LocalDate day) {
        assertEquals(List.of(), of(id, day).stream().filter(entry -> entry.rule().key().equals(rule)).map(Attention.Entry::reason).toList(), rule + " on " + day);
    }

    @AfterAll
    static void everyRuleWasMetOnce() {
        Set<String> met = new TreeSet<>(MET);
        met.addAll(ELSEWHERE);
        assertEquals(all, met, "a rule of the content that no case here meets is not tested");
    }

    @Test
    void reviews() {
        long id = cases.open("Review-None");
        met("review_none", id, OPENED);
        cases.sql("update case_file set next_review_on = date '2026-04-10' where id = %d", id);
        not("review_none", id, OPENED);
        not("review_due", id, LocalDate.of(2026, 4, 9));
        met("review_due", id, LocalDate.of(2026, 4, 10));
        not("review_overdue", id, LocalDate.of(2026, 4, 10));
        assertEquals("Review was due on 10 Apr 2026, 1 day ago.", met("review_overdue", id, LocalDate.of(2026, 4, 11)).reason().replace('\u00a0', ' '));
        cases.sql("update case_file set closed_on = date '2026-04-11', close_reason = 'GOALS_MET' where id = %d", id);
        not("review_overdue", id, LocalDate.of(2026, 4, 11));
    }

    // practice.md 4 [S for the record, CP for the day]: unsigned over 24 h; a visit knows its day, so from the day after
    @Test
    void notesAndMissedVisits() {
        long id = cases.open("Visit-Notes");
        not("note_unsigned", id, OPENED);
        met("note_unsigned", id, OPENED.plusDays(1));
        cases.signed(id, 1, OPENED);
        not("note_unsigned", id, OPENED.plusDays(1));
        LocalDate day = OPENED.plusDays(7);
        cases.addVisit(id, 2, day, "MISSED");
        Attention.Entry contact = met("missed_visit", id, day);
        assertEquals("Contact today", contact.label(), "the same step as in the diary");
        assertTrue(contact.href().startsWith("/diary/missed/v"), "and cleared there");
        cases.tried(id, 2, day, "text", "message");
        cases.tried(id, 2, day, "phone", "no_answer");
        assertEquals("Try again", met("missed_visit", id, day).label());
        cases.tried(id, 2, day, "phone", "reached");
        assertEquals("Offer a new date", met("missed_visit", id, day.plusDays(1)).label());
        cases.addVisit(id, 3, day.plusDays(5), "PLANNED");
        not("missed_visit", id, day.plusDays(1));
        cases.sql("update visit set attendance = 'MISSED' where case_file_id = %d and number = 3", id);
        assertEquals("Contact today", met("missed_visit", id, day.plusDays(5)).label(), "the second in a row: two routes, then the letter");
        cases.tried(id, 3, day.plusDays(5), "phone", "no_answer");
        cases.tried(id, 3, day.plusDays(5), "text", "message");
        assertEquals("Write a letter", met("missed_visit", id, day.plusDays(5)).label());
        cases.tried(id, 3, day.plusDays(5), "letter", "message");
        not("missed_visit", id, day.plusDays(6));
        assertEquals("The clinician decides", met("missed_visit", id, day.plusDays(19)).label());
        cases.addVisit(id, 4, day.plusDays(19), "ATTENDED");
        not("missed_visit", id, day.plusDays(19));
    }

    @Test
    void aMissedVisitOfACaseWithAnUrgentFlagIsPhonedAboutFirst() {
        long id = cases.open("Visit-Urgent");
        LocalDate day = OPENED.plusDays(7);
        cases.flag(id, cases.screen(id, OPENED, "POSITIVE", "", true), "SAME_DAY", OPENED);
        cases.addVisit(id, 2, day, "MISSED");
        assertEquals("Phone today", met("missed_visit", id, day).label());
    }

    // practice.md 5.5 [CP]: off work over 4 weeks; day 28 of an absence is four weeks, day 29 is over
    @Test
    void absenceOverFourWeeks() {
        long id = cases.open("Absence-Long");
        LocalDate off = LocalDate.of(2026, 3, 10);
        cases.status(id, "OFF", off, null);
        not("absence_long", id, off.plusDays(27));
        assertEquals(off.plusDays(28), met("absence_long", id, off.plusDays(28)).since());
        assertEquals(2, met("absence_long", id, off.plusDays(56)).level(), "twice as long is worse");
        long reduced = cases.open("Absence-Reduced");
        cases.status(reduced, "REDUCED", off, null);
        not("absence_long", reduced, off.plusDays(60));
        long broken = cases.open("Absence-Broken");
        cases.status(broken, "OFF", off, off.plusDays(13));
        cases.status(broken, "OFF", off.plusDays(15), null);
        not("absence_long", broken, off.plusDays(42));
        met("absence_long", broken, off.plusDays(43));
        long joined = cases.open("Absence-Joined");
        cases.status(joined, "OFF", off, off.plusDays(13));
        cases.status(joined, "OFF", off.plusDays(14), null);
        met("absence_long", joined, off.plusDays(28));
        cases.plan(joined, off.plusDays(28));
        not("absence_long", joined, off.plusDays(28));
    }

    @Test
    void stepsOfAReturnPlan() {
        long id = cases.open("Return-Plan");
        long plan = cases.plan(id, LocalDate.of(2026, 3, 9));
        not("work_plan_step", id, LocalDate.of(2026, 3, 8));
        met("work_plan_step", id, LocalDate.of(2026, 3, 9));
        not("work_plan_waiting", id, LocalDate.of(2026, 3, 9));
        cases.row("work_plan_step", Map.of("work_plan_id", plan, "week", 1, "move", "HOLD", "settled", "NO", "recorded_by", "Test", "recorded_at",
                OffsetDateTime.parse("2026-03-09T12:00Z")));
        met("work_plan_waiting", id, LocalDate.of(2026, 3, 9));
        not("work_plan_step", id, LocalDate.of(2026, 3, 9));
    }

    // practice.md 5.8 [CP]: not acted on after 2 weeks
    @Test
    void agreedChangesNotDone() {
        long id = cases.open("Finding-Agreed");
        LocalDate agreed = LocalDate.of(2026, 3, 10);
        long finding = cases.finding(id, OPENED, agreed);
        not("finding_not_done", id, agreed.plusDays(13));
        assertTrue(met("finding_not_done", id, agreed.plusDays(14)).reason().contains("the manager"));
        cases.sql("update workplace_finding set done_on = date '2026-03-20' where id = %d", finding);
        not("finding_not_done", id, agreed.plusDays(14));
    }

    // a proposal: under 60 % over two weeks; 6 of 10 is 60 %, which is not under
    @Test
    void exercisesLittleDone() {
        LocalDate day = LocalDate.of(2026, 4, 1);
        long kept = cases.open("Adherence-Kept");
        long exercise = cases.prescription(kept, OPENED);
        cases.adherence(exercise, day, 6, 10);
        not("adherence_low", kept, day);
        long low = cases.open("Adherence-Low");
        long other = cases.prescription(low, OPENED);
        cases.adherence(other, day, 59, 100);
        Attention.Entry entry = met("adherence_low", low, day);
        assertEquals("59 %", entry.facts().get("share").replace('\u00a0', ' '));
        met("adherence_low", low, day.plusDays(13));
        not("adherence_low", low, day.plusDays(14));
        long unknown = cases.open("Adherence-Unknown");
        cases.adherence(cases.prescription(unknown, OPENED), day, null, 10);
        not("adherence_low", unknown, day);
    }

    @Test
    void redFlags() {
        LocalDate day = LocalDate.of(2026, 3, 10);
        long id = cases.open("Flag-Levels");
        met("red_flags_not_asked", id, day);
        long screen = cases.screen(id, day, "INCOMPLETE", "nk_night", false);
        not("red_flags_not_asked", id, day);
        met("red_flag_screen_incomplete", id, day);
        cases.sql("update red_flag_screen set verdict = 'CLEAR', open_answers = '' where id = %d", screen);
        not("red_flag_screen_incomplete", id, day);
        met("red_flag_screen_unsigned", id, day);
        long flag = cases.flag(id, screen, "SAME_DAY", day);
        assertEquals(Attention.Urgency.NOW, met("red_flag_call", id, day).urgency());
        cases.call(id, day);
        not("red_flag_call", id, day);
        assertEquals(Attention.Urgency.TODAY, met("red_flag_seen", id, day).urgency());
        cases.sql("update red_flag set urgency = 'URGENT_2_WEEKS' where id = %d", flag);
        not("red_flag_seen", id, day);
        met("red_flag_medical_look", id, day);
        cases.sql("update red_flag set urgency = 'DISCUSS_DOCTOR' where id = %d", flag);
        met("red_flag_open", id, day);
    }

    @Test
    void redFlagScreensThatAreSigned() {
        LocalDate day = LocalDate.now();
        long id = cases.open("Flag-Signed");
        cases.screen(id, day.minusDays(28), "CLEAR", "", true);
        not("red_flag_screen_old", id, day);
        not("red_flag_region_not_asked", id, day);
        long old = cases.open("Flag-Old");
        cases.screen(old, day.minusDays(29), "CLEAR", "", true);
        met("red_flag_screen_old", old, day);
        cases.symptoms(id, OPENED, "knee_l");
        met("red_flag_region_not_asked", id, day);
    }

    @Test
    void whatPatientsReport() {
        LocalDate day = LocalDate.of(2026, 3, 10);
        long id = cases.open("Own-Reports");
        long plain = cases.report(id, day, null, false, false);
        met("own_report", id, day);
        cases.sql("update own_report set worse = 'Overall change −4, in the patient’s own word' where id = %d", plain);
        met("own_report_worse", id, day);
        cases.sql("update own_report set pain_up = true where id = %d", plain);
        met("own_report_pain", id, day);
        cases.sql("update own_report set warnings = 'numb saddle' where id = %d", plain);
        assertEquals(Attention.Urgency.NOW, met("own_report_warning", id, day).urgency());
        cases.sql("update own_report set at_once = true where id = %d", plain);
        met("own_report_emergency", id, day);
        cases.sql("update own_report set reviewed_at = received_at, reviewed_by = 'Test' where id = %d", plain);
        not("own_report_emergency", id, day);
        long exercise = cases.prescription(id, OPENED);
        cases.tick(exercise, day.minusDays(1), false);
        not("own_session_pain", id, day);
        cases.tick(exercise, day, true);
        met("own_session_pain", id, day);
        long link = cases.lockedLink(id, day);
        met("own_page_locked", id, day);
        cases.sql("update own_link set revoked_at = locked_at, revoked_by = 'Test' where id = %d", link);
        not("own_page_locked", id, day);
    }

    @Test
    void lettersAndReferrals() {
        LocalDate day = LocalDate.of(2026, 3, 10);
        long drafts = cases.open("Letter-Draft");
        cases.letter(drafts, "progress_report", day);
        met("letter_unsigned", drafts, day);
        not("letter_unsigned_at_once", drafts, day);
        long urgent = cases.open("Letter-Urgent");
        long referral = cases.letter(urgent, "urgent_referral", day);
        met("letter_unsigned_at_once", urgent, day);
        cases.letterEvent(referral, "SENT", day, null);
        not("referral_urgent_unanswered", urgent, day.plusDays(1));
        met("referral_urgent_unanswered", urgent, day.plusDays(2));
        long routine = cases.open("Letter-Routine");
        long letter = cases.letter(routine, "routine_referral", day);
        cases.letterEvent(letter, "SENT", day, null);
        not("referral_unanswered", routine, day.plusDays(13));
        met("referral_unanswered", routine, day.plusDays(14));
        cases.letterEvent(letter, "ANSWERED", day.plusDays(14), null);
        not("referral_unanswered", routine, day.plusDays(14));
        long awaited = cases.open("Letter-Awaited");
        long asked = cases.letter(awaited, "progress_report", day);
        cases.letterEvent(asked, "SENT", day, day.plusDays(5));
        not("answer_awaited", awaited, day.plusDays(5));
        met("answer_awaited", awaited, day.plusDays(6));
    }

    @Test
    void consentsThatEnd() {
        LocalDate until = LocalDate.of(2026, 6, 30);
        long id = cases.open("Consent-Ends");
        long doctor = cases.newDoctor();
        cases.consent(id, doctor, OPENED, until);
        not("consent_ending", id, until.minusDays(15));
        met("consent_ending", id, until.minusDays(14));
        met("consent_ending", id, until);
        not("consent_ending", id, until.plusDays(1));
        cases.consent(id, cases.newDoctor(), OPENED.plusDays(1), until.plusDays(90));
        met("consent_ending", id, until);
        cases.consent(id, doctor, OPENED.plusDays(2), until.plusDays(90));
        not("consent_ending", id, until);
    }
}
