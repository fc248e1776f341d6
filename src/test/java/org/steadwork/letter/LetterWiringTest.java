package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.casefile.CaseFile;
import org.steadwork.exercise.TestHolds;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** What the rest of the case file gives to a letter, and what it holds back. */
@QuarkusTest
class LetterWiringTest {

    @Inject
    TestAccounts accounts;

    @Inject
    LetterCases cases;

    @Inject
    LetterSteps steps;

    @Inject
    ExerciseFacts exercises;

    @Inject
    TestHolds holds;

    @Inject
    EntityManager db;

    private void redFlag(LetterCases.Made made, String question) {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String page = "/cases/" + made.caseId() + "/red-flags";
        visitor.open(page);
        visitor.submit(page, Map.of("answer." + question, "yes", "answer.nk_cord_shock", "no", "answer.gen_weight_loss", "unknown"),
                Map.of("region", List.of("neck")));
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    private static String field(Visitor visitor, String name) {
        return visitor.page().select("[name=" + name + "]").text();
    }

    @Test
    void anUrgentReferralTakesUpTheFlagTheAnswersAndWhatIsStopped() {
        LetterCases.Made made = cases.make();
        redFlag(made, "nk_cord_hands");
        Visitor visitor = steps.draft(made, "urgent_referral", made.doctorKey());
        assertTrue(field(visitor, "text-findings").contains("Clumsy hands. May point to: Cervical cord compression"), field(visitor, "text-findings"));
        assertTrue(field(visitor, "text-request").contains("within 2 weeks"), field(visitor, "text-request"));
        assertTrue(field(visitor, "text-negatives").contains("lectric shock on bending the neck"), field(visitor, "text-negatives"));
        assertTrue(field(visitor, "text-not_established").contains("Asked, not known: weight loss"), field(visitor, "text-not_established"));
        assertTrue(field(visitor, "text-not_established").contains("Not asked:"), field(visitor, "text-not_established"));
        assertTrue(field(visitor, "text-done").contains("Stopped: ") && field(visitor, "text-done").contains("Thrust techniques to the neck"),
                field(visitor, "text-done"));
    }

    @Test
    void whatARedFlagHoldsBackIsPausedInLettersAndNotGivenToThePatientToDo() {
        LetterCases.Made made = cases.make();
        cases.fill(made);
        List<LetterFact> before = exerciseFacts(made);
        assertTrue(before.stream().anyMatch(fact -> fact.section().equals("exercises")), before.toString());
        holds.suspend(made.caseId(), "all_treatment", Set.of(), "Everything waits");
        List<LetterFact> after = exerciseFacts(made);
        assertFalse(after.stream().anyMatch(fact -> fact.section().equals("exercises")), after.toString());
        assertTrue(after.stream().filter(fact -> fact.section().equals("programme")).allMatch(fact -> fact.text().endsWith(": paused for now.")), after.toString());
    }

    private List<LetterFact> exerciseFacts(LetterCases.Made made) {
        return QuarkusTransaction.requiringNew().call(() -> exercises.of(db.find(CaseFile.class, made.caseId())));
    }

    @Test
    void anEmployerIsToldThatAnOpinionWasAdvisedAndNeverWhy() {
        LetterCases.Made made = cases.make();
        redFlag(made, "nk_cord_hands");
        cases.consent(made, cases.employer(made), cases.today().plusDays(5), InformationCategory.RED_FLAG_RESULT);
        Visitor visitor = steps.draft(made, "employer_report", made.employerKey());
        assertTrue(field(visitor, "text-limited").contains("A medical opinion has been advised"), field(visitor, "text-limited"));
        String held = visitor.page().select("section:has(#held)").text();
        assertTrue(held.contains("Clumsy hands") && held.contains("never goes to an employer"), held);
        String path = made.letters() + "/1";
        LetterSteps.saveReport(visitor, path);
        steps.shown(visitor, path, "agreed");
        LetterSteps.sign(visitor, path, Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
        String text = PrintedPages.text(LetterSteps.pdf(visitor, made));
        assertTrue(text.contains("A medical opinion has been advised"), text);
        for (String word : List.of("clumsy", "cord", "neck", "flag", "urgent")) {
            assertFalse(text.toLowerCase().contains(word), word + " in " + text);
        }
    }

    @Test
    void aFlagThatSuspendsAllTreatmentHoldsTheReportAndNotTheReferral() {
        LetterCases.Made made = cases.make();
        redFlag(made, "gen_sepsis");
        cases.consent(made, cases.employer(made), cases.today().plusDays(5));
        cases.consent(made, cases.doctor(made), cases.today().plusDays(5));
        Visitor visitor = steps.draft(made, "employer_report", made.employerKey());
        LetterSteps.saveReport(visitor, made.letters() + "/1");
        steps.shown(visitor, made.letters() + "/1", "agreed");
        LetterSteps.sign(visitor, made.letters() + "/1", Map.of());
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().text().contains("An open red flag holds this letter back"), visitor.page().select("#checks").text());

        visitor = steps.draft(made, "urgent_referral", made.doctorKey());
        LetterSteps.save(visitor, made.letters() + "/2", LetterSteps.REFERRAL);
        LetterSteps.sign(visitor, made.letters() + "/2", Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    @Test
    void anotherKindOfLetterIsAFileAndATemplate() {
        LetterCases.Made made = cases.make();
        cases.fill(made);
        cases.consent(made, cases.doctor(made), cases.today().plusDays(5));
        Visitor visitor = steps.draft(made, "routine_referral", made.doctorKey());
        assertTrue(field(visitor, "text-programme").contains("since "), field(visitor, "text-programme"));
        assertEquals("Red-flag questions have not been asked.", field(visitor, "text-flag_status"));
        LetterSteps.save(visitor, made.letters() + "/1", Map.of("text-question", "I would value your opinion on her hand numbness.",
                "text-next", "I will go on with the exercises.", "text-reply", "I would be grateful for your reply by 15 January 2027."));
        LetterSteps.sign(visitor, made.letters() + "/1", Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(PrintedPages.text(LetterSteps.pdf(visitor, made)).contains("Neck Disability Index"));
    }

    @Test
    void scoresAndExercisesGoToADoctorAndNeverToAnEmployer() {
        LetterCases.Made made = cases.make();
        cases.fill(made);
        Visitor doctor = steps.draft(made, "routine_referral", made.doctorKey());
        assertTrue(field(doctor, "text-scores").contains("Neck Disability Index") && field(doctor, "text-scores").contains("measurement error"), field(doctor, "text-scores"));
        cases.consent(made, cases.employer(made), cases.today().plusDays(5), InformationCategory.values());
        Visitor employer = steps.draft(made, "employer_report", made.employerKey());
        assertTrue(field(employer, "text-work_status").contains("Modified (usual hours, changed tasks or limits)"), field(employer, "text-work_status"));
        String held = employer.page().select("section:has(#held)").text();
        assertTrue(held.contains("Neck Disability Index") && held.contains("Exercise programme: never goes to an employer"), held);
        String words = employer.page().select("form#edit textarea").text() + employer.page().select("form#edit input").eachAttr("value");
        assertFalse(words.contains("Neck Disability Index"), words);
    }
}
