package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

@QuarkusTest
class LetterPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    LetterCases cases;

    @Inject
    LetterSteps steps;

    @Test
    void anEmptyCaseSaysWhatToDo() {
        LetterCases.Made made = cases.make();
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open(made.letters());
        assertEquals(200, visitor.status());
        assertTrue(visitor.page().select("main").text().contains("No letter yet"), visitor.page().select("main").text());
    }

    @Test
    void onlyCliniciansOpenLetters() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), cases.today().plusDays(5));
        steps.draft(made, "employer_report", made.employerKey());
        String letter = made.letters() + "/1";
        for (String path : List.of(made.letters(), letter, made.letters() + "/new/employer_report", letter + "/file/page-1.png", letter + "/file/letter.pdf",
                "/cases/" + made.caseId() + "/consents/new")) {
            Visitor assistant = accounts.visitor(Role.ASSISTANT);
            assistant.open(path);
            assertEquals(403, assistant.status(), path);
            Visitor stranger = new Visitor();
            stranger.open(path);
            assertTrue(stranger.page().title().startsWith("Sign in"), path);
            if (!path.endsWith(".pdf")) {
                Visitor lead = accounts.visitor(Role.LEAD);
                lead.open(path);
                assertEquals(200, lead.status(), path);
            }
        }
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        assistant.open("/patients");
        String token = assistant.page().select("input[name=csrf-token]").attr("value");
        for (String path : List.of(letter, letter + "/sign", letter + "/record/shown", letter + "/record/sent", letter + "/record/override",
                letter + "/record/withdrawn", made.letters() + "/new/employer_report", "/cases/" + made.caseId() + "/consents/new")) {
            assistant.post(path, Map.of("csrf-token", List.of(token)));
            assertEquals(403, assistant.status(), path);
        }
    }

    @Test
    void nothingIsTakenWithoutTheFormToken() {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.draft(made, "employer_report", made.employerKey());
        for (String path : List.of("/1", "/1/sign", "/1/record/shown", "/1/record/override", "/new/employer_report")) {
            visitor.post(made.letters() + path, Map.of("version", List.of("0")));
            assertEquals(400, visitor.status(), path);
        }
    }

    @Test
    void aDraftHoldsOnlyWhatTheReaderMayHaveAndSaysWhatWasHeldBack() {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.draft(made, "employer_report", made.employerKey());
        String words = visitor.page().select("form#edit textarea, form#edit input").eachAttr("value") + visitor.page().select("form#edit textarea").text();
        assertFalse(words.contains("shoulder") || words.contains("Pregnancy"), words);
        String held = visitor.page().select("section:has(#held)").text();
        assertTrue(held.contains("Neck and right shoulder ache") && held.contains("Pregnancy"), held);
        assertTrue(visitor.page().select("#checks").text().contains("is not given"), visitor.page().select("#checks").text());
        assertEquals(0, visitor.page().select("[name=text-symptoms]").size());
    }

    @Test
    void aTickOpensItsSection() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), cases.today().plusDays(5), InformationCategory.SYMPTOMS, InformationCategory.MEDICAL_HISTORY);
        Visitor visitor = steps.draft(made, "employer_report", made.employerKey());
        assertTrue(visitor.page().select("[name=text-symptoms]").text().contains("Neck and right shoulder ache"));
        assertTrue(visitor.page().select("section:has(#held)").text().contains("Pregnancy"), "never, ticked or not");
    }

    @Test
    void withoutConsentOrWithAWithdrawnOneNothingIsSigned() {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.draft(made, "employer_report", made.employerKey());
        LetterSteps.saveReport(visitor, made.letters() + "/1");
        steps.shown(visitor, made.letters() + "/1", "agreed");
        LetterSteps.sign(visitor, made.letters() + "/1", Map.of());
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#problems-title + p + ul").text().contains("is not given"), visitor.page().text());

        long consent = cases.consent(made, cases.employer(made), cases.today().plusDays(5));
        String withdraw = "/cases/" + made.caseId() + "/consents/" + consent + "/withdraw";
        visitor.open(withdraw);
        visitor.submit(withdraw, Map.of("how", "by telephone"));
        assertTrue(visitor.page().select("section:has(#consents)").text().contains("withdrawn"), visitor.page().text());
        visitor.open(made.letters() + "/1");
        LetterSteps.sign(visitor, made.letters() + "/1", Map.of());
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().text().contains("is withdrawn"));
    }

    @Test
    void whatStandsInTheWayIsNamedAndTheWordsAreKept() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), cases.today().plusDays(5));
        Visitor visitor = steps.draft(made, "employer_report", made.employerKey());
        LetterSteps.sign(visitor, made.letters() + "/1", Map.of("password", "wrong"));
        assertEquals(422, visitor.status());
        String problems = visitor.page().select("#problems-title + p + ul").text();
        assertTrue(problems.contains("password is not right"), problems);
        assertTrue(problems.contains("Fill in “What the worker can do”"), problems);
        assertTrue(problems.contains("[the changes, in short], [date]"), problems);
        assertTrue(problems.contains("Show it to the worker first"), problems);
        assertEquals("", visitor.page().select("#password").attr("value"));

        visitor.open(made.letters() + "/1");
        LetterSteps.save(visitor, made.letters() + "/1", Map.of("text-certificate", "With kind regards."));
        assertTrue(visitor.page().select("#check-standing-certificate").text().contains("must still say"), visitor.page().select("#checks").text());
    }

    @Test
    void clinicalWordsInAReportAreAskedAboutAndNeverChanged() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), cases.today().plusDays(5));
        Visitor visitor = steps.draft(made, "employer_report", made.employerKey());
        String path = made.letters() + "/1";
        LetterSteps.saveReport(visitor, path);
        LetterSteps.save(visitor, path, Map.of("text-can_do", "She can lift 5 kg with the right shoulder."));
        steps.shown(visitor, path, "agreed");
        assertEquals("She can lift 5 kg with the right shoulder.", visitor.page().select("[name=text-can_do]").text());
        LetterSteps.sign(visitor, path, Map.of());
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#why-words-symptoms-error").text().contains("shoulder"), visitor.page().text());
        LetterSteps.sign(visitor, path, Map.of("why-words-symptoms", "The worker asked for these words"));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().text().contains("The worker asked for these words"));

        LetterCases.Made other = cases.make();
        cases.consent(other, cases.employer(other), cases.today().plusDays(5));
        Visitor second = steps.draft(other, "employer_report", other.employerKey());
        LetterSteps.saveReport(second, other.letters() + "/1");
        LetterSteps.save(second, other.letters() + "/1", Map.of("text-can_do", "NDI fell to 20; pain 3/10."));
        steps.shown(second, other.letters() + "/1", "agreed");
        LetterSteps.sign(second, other.letters() + "/1", Map.of("why-words-outcome_scores", "x", "why-words-pain_scores", "x"));
        assertEquals(422, second.status(), "scores never go to an employer");
    }

    @Test
    void wordsThatWereNotSavedAreNotSigned() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), cases.today().plusDays(5));
        Visitor visitor = steps.draft(made, "employer_report", made.employerKey());
        LetterSteps.saveReport(visitor, made.letters() + "/1");
        steps.shown(visitor, made.letters() + "/1", "agreed");
        LetterSteps.sign(visitor, made.letters() + "/1", Map.of("text-can_do", "She can lift 8 kg."));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().text().contains("differs from the saved draft"));
        assertEquals("She can lift 8 kg.", visitor.page().select("[name=text-can_do]").text());
    }

    @Test
    void theWorkerMustHaveSeenThisVeryVersion() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), cases.today().plusDays(5));
        Visitor visitor = steps.draft(made, "employer_report", made.employerKey());
        LetterSteps.saveReport(visitor, made.letters() + "/1");
        steps.shown(visitor, made.letters() + "/1", "agreed");
        LetterSteps.save(visitor, made.letters() + "/1", Map.of("text-can_do", "She can lift 6 kg."));
        LetterSteps.sign(visitor, made.letters() + "/1", Map.of());
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().text().contains("changed after that"));
    }

    @Test
    void aStaleSaveShowsBothVersions() {
        LetterCases.Made made = cases.make();
        Visitor first = steps.draft(made, "employer_report", made.employerKey());
        Visitor second = accounts.visitor(Role.LEAD);
        second.open(made.letters() + "/1");
        LetterSteps.save(first, made.letters() + "/1", Map.of("text-can_do", "Words of the first."));
        second.submit(made.letters() + "/1", Map.of("text-can_do", "Words of the second."));
        assertEquals(409, second.status());
        assertEquals("Words of the second.", second.page().select("[name=text-can_do]").text());
        assertTrue(second.page().select("#text-can_do-stored").text().contains("Words of the first."));
        second.submit(made.letters() + "/1", Map.of());
        assertEquals(200, second.status());
        assertEquals("Words of the second.", second.page().select("[name=text-can_do]").text());
    }

    @Test
    void anUrgentReferralGoesByConsentOrByARecordedOverride() {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.draft(made, "urgent_referral", made.doctorKey());
        String path = made.letters() + "/1";
        assertTrue(visitor.page().select("[name=text-background]").text().contains("Pregnancy"), "a doctor may have the history");
        assertTrue(visitor.page().select("[name=text-pain]").text().contains("right shoulder now\u00a04, average\u00a05, worst\u00a07, at work\u00a06"), "a doctor may have the scores");
        LetterSteps.save(visitor, path, LetterSteps.REFERRAL);
        LetterSteps.sign(visitor, path, Map.of());
        assertEquals(422, visitor.status());
        visitor.open(path);
        visitor.submit(path + "/record/override", Map.of("ground", "vital_interests"));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#decidedBy-error").text().contains("missing"));
        visitor.submit(path + "/record/override", Map.of("ground", "vital_interests", "decidedBy", "T. Okoro-Vale", "groundText", "cord at risk",
                "what", "findings, to the doctor", "whyNoConsent", "not able to answer", "workerTold", "will be told by telephone"));
        assertEquals(200, visitor.status(), visitor.page().text());
        LetterSteps.sign(visitor, path, Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().text().contains("Override, on the ground of threat to life"));
        String text = PrintedPages.text(LetterSteps.pdf(visitor, made));
        assertTrue(text.contains("not a diagnosis") && text.contains("your medical judgement"), text);
    }

    @Test
    void sendingNeedsTheConsentOnThatDay() {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.signedReport(made);
        String sent = made.letters() + "/1/record/sent";
        visitor.submit(sent, Map.of("answer", "sent", "happenedOn", cases.today().minusDays(15).toString(), "how", "by post"));
        assertEquals(422, visitor.status());
        visitor.open(made.letters() + "/1");
        visitor.submit(sent, Map.of("answer", "sent", "happenedOn", cases.today().toString(), "how", "by post"));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().select("section:has(#sofar)").text().contains("Sent, by post"));
        visitor.submit(made.letters() + "/1/record/withdrawn", Map.of("reason", "Wrong date for the headset"));
        assertTrue(visitor.page().text().contains("Not to be relied on"));
        assertTrue(visitor.open(made.letters()).text().contains("signed, not to be relied on"));
    }

    @Test
    void aConsentStartsWithEmptyBoxesAndTakesOnlyWhatMayBeTicked() {
        LetterCases.Made made = cases.make();
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String path = "/cases/" + made.caseId() + "/consents/new";
        visitor.open(path + "?to=" + made.employerKey());
        assertEquals(0, visitor.page().select("input[type=checkbox][checked]").size());
        assertEquals(4, visitor.page().select("input[name=tick]").size());
        visitor.submit(path, Map.of("until", "1 Jan 2020", "how", "spoken"));
        assertEquals(422, visitor.status());
        visitor.submit(path, Map.of("until", cases.today().plusDays(30).toString()), Map.of("tick", List.of("SYMPTOMS", "PAIN_SCORES")));
        assertEquals(200, visitor.status(), visitor.page().text());
        String row = visitor.page().select("section:has(#consents) table").text();
        assertTrue(row.contains("Symptoms and where they are") && !row.contains("Pain scores"), row);
    }

    @Test
    void whatIsNotThereIsNotFound() {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.draft(made, "employer_report", made.employerKey());
        for (String path : List.of("/2", "/1/file/page-9.png", "/1/file/letter.pdf", "/new/no_such_kind")) {
            visitor.open(made.letters() + path);
            assertEquals(404, visitor.status(), path);
        }
        LetterCases.Made other = cases.make();
        visitor.open(other.letters() + "/1");
        assertEquals(404, visitor.status());
    }
}
