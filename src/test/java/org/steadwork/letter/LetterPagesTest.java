package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.pdfbox.preflight.parser.PreflightParser;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.pdf.LetterPdf;
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

@QuarkusTest
class LetterPagesTest {

    /** Words of a report that an employer may have. */
    private static final Map<String, String> REPORT = Map.of("text-request", "I ask for a headset by 4 December 2026.",
            "text-work_status", "Full hours and duties.", "text-can_do", "She can sit 45 minutes at a time and lift 5 kg.",
            "text-next", "I will review this on 15 January 2027. Please tell me if it is not practicable.");
    private static final Map<String, String> REFERRAL = Map.of("text-situation", "Numbness of both feet since this morning.",
            "text-request", "I would be grateful for your assessment today.", "text-findings", "Reports numbness. Reflexes measured as absent on the left.",
            "text-onset", "Began 24 November 2026, 08:00; spread by noon.", "text-done", "Treatment is stopped. Told to go at once if it spreads.",
            "text-contact", "You can reach me on 0000 555 014.");

    @Inject
    TestAccounts accounts;

    @Inject
    LetterCases cases;

    private Visitor draft(LetterCases.Made made, String kind, String to) {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String path = made.letters() + "/new/" + kind;
        visitor.open(path);
        visitor.submit(path, Map.of("to", to));
        assertEquals(200, visitor.status(), visitor.page().text());
        return visitor;
    }

    private static void save(Visitor visitor, String path, Map<String, String> words) {
        visitor.submit(path, words, Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    private static void saveReport(Visitor visitor, String path) {
        visitor.submit(path, REPORT, Map.of("rows-modifications", List.of("Headset", "2 h of calls a day", "4 Dec 2026", "15 Jan 2027")));
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    private static void shown(Visitor visitor, String path, String answer) {
        visitor.submit(path + "/record/shown", Map.of("answer", answer, "happenedOn", LocalDate.now().toString(), "how", "in the visit"));
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    /** Presses the sign button: it sends the editor's form to another address. */
    private static void sign(Visitor visitor, String path, Map<String, String> more) {
        Map<String, String> changes = new LinkedHashMap<>(Map.of("password", TestAccounts.PASSWORD));
        changes.putAll(more);
        visitor.page().select("form#edit").attr("action", path + "/sign");
        visitor.submit(path + "/sign", changes);
    }

    private Visitor signedReport(LetterCases.Made made) {
        cases.consent(made, cases.employer(made), LocalDate.now().plusDays(5));
        Visitor visitor = draft(made, "employer_report", made.employerKey());
        saveReport(visitor, made.letters() + "/1");
        shown(visitor, made.letters() + "/1", "agreed");
        sign(visitor, made.letters() + "/1", Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
        return visitor;
    }

    private static byte[] pdf(Visitor visitor, LetterCases.Made made) {
        visitor.open(made.letters() + "/1/file/letter.pdf");
        assertEquals(200, visitor.status());
        return visitor.answer().asByteArray();
    }

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
        cases.consent(made, cases.employer(made), LocalDate.now().plusDays(5));
        draft(made, "employer_report", made.employerKey());
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
        Visitor visitor = draft(made, "employer_report", made.employerKey());
        for (String path : List.of("/1", "/1/sign", "/1/record/shown", "/1/record/override", "/new/employer_report")) {
            visitor.post(made.letters() + path, Map.of("version", List.of("0")));
            assertEquals(400, visitor.status(), path);
        }
    }

    @Test
    void aDraftHoldsOnlyWhatTheReaderMayHaveAndSaysWhatWasHeldBack() {
        LetterCases.Made made = cases.make();
        Visitor visitor = draft(made, "employer_report", made.employerKey());
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
        cases.consent(made, cases.employer(made), LocalDate.now().plusDays(5), InformationCategory.SYMPTOMS, InformationCategory.MEDICAL_HISTORY);
        Visitor visitor = draft(made, "employer_report", made.employerKey());
        assertTrue(visitor.page().select("[name=text-symptoms]").text().contains("Neck and right shoulder ache"));
        assertTrue(visitor.page().select("section:has(#held)").text().contains("Pregnancy"), "never, ticked or not");
    }

    @Test
    void aSignedReportIsArchivableAndHoldsNothingClinical() throws Exception {
        LetterCases.Made made = cases.make();
        Visitor visitor = signedReport(made);
        String shownFingerprint = visitor.page().select(".fingerprint").text();
        byte[] file = pdf(visitor, made);
        assertTrue(shownFingerprint.contains(LetterPdf.sha256(file)), shownFingerprint);
        assertEquals("application/pdf", visitor.answer().contentType());
        assertTrue(visitor.answer().header("Content-Disposition").matches("attachment; filename=\"letter-SW-\\d+-1.pdf\""));
        Path path = Files.createTempFile("report", ".pdf");
        Files.write(path, file);
        assertTrue(PreflightParser.validate(path.toFile()).isValid());
        Files.delete(path);
        String text = PrintedPages.text(file);
        assertTrue(text.contains("Åse Đặng-Tverdal, born 6\u00a0November\u00a01991") || text.contains("Åse Đặng-Tverdal, born 6 November 1991"), text);
        assertTrue(text.contains("not a medical certificate") && text.contains("Signed electronically on"), text);
        assertTrue(text.contains("Headset") && text.contains("Test Clinician"), text);
        for (String clinical : List.of("neck", "shoulder", "ache", "pain", "pregnan", "red flag", "NDI", "QuickDASH", "PSFS", "/10", "held back", "Draft")) {
            assertFalse(text.toLowerCase().contains(clinical.toLowerCase()), clinical + " in:\n" + text);
        }
    }

    @Test
    void withoutConsentOrWithAWithdrawnOneNothingIsSigned() {
        LetterCases.Made made = cases.make();
        Visitor visitor = draft(made, "employer_report", made.employerKey());
        saveReport(visitor, made.letters() + "/1");
        shown(visitor, made.letters() + "/1", "agreed");
        sign(visitor, made.letters() + "/1", Map.of());
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#problems-title + p + ul").text().contains("is not given"), visitor.page().text());

        long consent = cases.consent(made, cases.employer(made), LocalDate.now().plusDays(5));
        String withdraw = "/cases/" + made.caseId() + "/consents/" + consent + "/withdraw";
        visitor.open(withdraw);
        visitor.submit(withdraw, Map.of("how", "by telephone"));
        assertTrue(visitor.page().select("section:has(#consents)").text().contains("withdrawn"), visitor.page().text());
        visitor.open(made.letters() + "/1");
        sign(visitor, made.letters() + "/1", Map.of());
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().text().contains("is withdrawn"));
    }

    @Test
    void whatStandsInTheWayIsNamedAndTheWordsAreKept() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), LocalDate.now().plusDays(5));
        Visitor visitor = draft(made, "employer_report", made.employerKey());
        sign(visitor, made.letters() + "/1", Map.of("password", "wrong"));
        assertEquals(422, visitor.status());
        String problems = visitor.page().select("#problems-title + p + ul").text();
        assertTrue(problems.contains("password is not right"), problems);
        assertTrue(problems.contains("Fill in “Work status”"), problems);
        assertTrue(problems.contains("[the changes, in short], [date]"), problems);
        assertTrue(problems.contains("Show it to the worker first"), problems);
        assertEquals("", visitor.page().select("#password").attr("value"));

        visitor.open(made.letters() + "/1");
        save(visitor, made.letters() + "/1", Map.of("text-certificate", "With kind regards."));
        assertTrue(visitor.page().select("#check-standing-certificate").text().contains("must still say"), visitor.page().select("#checks").text());
    }

    @Test
    void clinicalWordsInAReportAreAskedAboutAndNeverChanged() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), LocalDate.now().plusDays(5));
        Visitor visitor = draft(made, "employer_report", made.employerKey());
        String path = made.letters() + "/1";
        saveReport(visitor, path);
        save(visitor, path, Map.of("text-can_do", "She can lift 5 kg with the right shoulder."));
        shown(visitor, path, "agreed");
        assertEquals("She can lift 5 kg with the right shoulder.", visitor.page().select("[name=text-can_do]").text());
        sign(visitor, path, Map.of());
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#why-words-symptoms-error").text().contains("shoulder"), visitor.page().text());
        sign(visitor, path, Map.of("why-words-symptoms", "The worker asked for these words"));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().text().contains("The worker asked for these words"));

        LetterCases.Made other = cases.make();
        cases.consent(other, cases.employer(other), LocalDate.now().plusDays(5));
        Visitor second = draft(other, "employer_report", other.employerKey());
        saveReport(second, other.letters() + "/1");
        save(second, other.letters() + "/1", Map.of("text-can_do", "NDI fell to 20; pain 3/10."));
        shown(second, other.letters() + "/1", "agreed");
        sign(second, other.letters() + "/1", Map.of("why-words-outcome_scores", "x", "why-words-pain_scores", "x"));
        assertEquals(422, second.status(), "scores never go to an employer");
    }

    @Test
    void wordsThatWereNotSavedAreNotSigned() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), LocalDate.now().plusDays(5));
        Visitor visitor = draft(made, "employer_report", made.employerKey());
        saveReport(visitor, made.letters() + "/1");
        shown(visitor, made.letters() + "/1", "agreed");
        sign(visitor, made.letters() + "/1", Map.of("text-can_do", "She can lift 8 kg."));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().text().contains("differs from the saved draft"));
        assertEquals("She can lift 8 kg.", visitor.page().select("[name=text-can_do]").text());
    }

    @Test
    void theWorkerMustHaveSeenThisVeryVersion() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), LocalDate.now().plusDays(5));
        Visitor visitor = draft(made, "employer_report", made.employerKey());
        saveReport(visitor, made.letters() + "/1");
        shown(visitor, made.letters() + "/1", "agreed");
        save(visitor, made.letters() + "/1", Map.of("text-can_do", "She can lift 6 kg."));
        sign(visitor, made.letters() + "/1", Map.of());
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().text().contains("changed after that"));
    }

    @Test
    void aStaleSaveShowsBothVersions() {
        LetterCases.Made made = cases.make();
        Visitor first = draft(made, "employer_report", made.employerKey());
        Visitor second = accounts.visitor(Role.LEAD);
        second.open(made.letters() + "/1");
        save(first, made.letters() + "/1", Map.of("text-can_do", "Words of the first."));
        second.submit(made.letters() + "/1", Map.of("text-can_do", "Words of the second."));
        assertEquals(409, second.status());
        assertEquals("Words of the second.", second.page().select("[name=text-can_do]").text());
        assertTrue(second.page().select("#text-can_do-stored").text().contains("Words of the first."));
        second.submit(made.letters() + "/1", Map.of());
        assertEquals(200, second.status());
        assertEquals("Words of the second.", second.page().select("[name=text-can_do]").text());
    }

    @Test
    void twoCliniciansSigningAtOnceMakeOneSignature() throws Exception {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), LocalDate.now().plusDays(5));
        Visitor first = draft(made, "employer_report", made.employerKey());
        saveReport(first, made.letters() + "/1");
        shown(first, made.letters() + "/1", "agreed");
        Visitor second = accounts.visitor(Role.LEAD);
        second.open(made.letters() + "/1");
        CountDownLatch go = new CountDownLatch(1);
        ExecutorService two = Executors.newFixedThreadPool(2);
        List<Future<Integer>> answers = List.of(first, second).stream().map(visitor -> two.submit(() -> {
            go.await();
            sign(visitor, made.letters() + "/1", Map.of());
            return visitor.status();
        })).toList();
        go.countDown();
        List<Integer> statuses = List.of(answers.get(0).get(), answers.get(1).get()).stream().sorted().toList();
        two.shutdown();
        assertEquals(List.of(200, 409), statuses);
        assertEquals(1, cases.signatures(made));
    }

    @Test
    void aSignedLetterCannotBeChangedByAnyPath() {
        LetterCases.Made made = cases.make();
        Visitor visitor = accounts.visitor(Role.LEAD);
        cases.consent(made, cases.employer(made), LocalDate.now().plusDays(5));
        Visitor writer = draft(made, "employer_report", made.employerKey());
        visitor.open(made.letters() + "/1");
        writer.open(made.letters() + "/1");
        saveReport(writer, made.letters() + "/1");
        shown(writer, made.letters() + "/1", "agreed");
        sign(writer, made.letters() + "/1", Map.of());
        byte[] before = pdf(writer, made);
        visitor.submit(made.letters() + "/1", Map.of("text-can_do", "Changed after signing."));
        assertEquals(409, visitor.status());
        assertTrue(visitor.page().text().contains("signed meanwhile"));
        assertEquals(0, visitor.page().select("form#edit").size());
        assertTrue(cases.refuses(() -> cases.writeThroughTheEntity(made)), "the entity");
        assertTrue(cases.refuses(() -> cases.execute("update letter set texts = '{}', version = version + 1 where case_file_id = " + made.caseId())), "a new version");
        assertTrue(cases.refuses(() -> cases.execute("delete from letter where case_file_id = " + made.caseId())), "removal");
        assertTrue(cases.signedEntityIgnoresChanges(made), "the signed entity");
        assertArrayEquals(before, pdf(writer, made));
    }

    @Test
    void aFileThatWasTamperedWithIsNotHandedOut() {
        LetterCases.Made made = cases.make();
        Visitor visitor = signedReport(made);
        cases.execute("update signed_letter set pdf = cast('" + "00".repeat(40) + "' as bytea) where letter_id in (select id from letter where case_file_id = "
                + made.caseId() + ")");
        visitor.open(made.letters() + "/1/file/letter.pdf");
        assertEquals(500, visitor.status());
        visitor.open(made.letters() + "/1");
        assertTrue(visitor.page().text().contains("not the one that was signed"), visitor.page().text());
    }

    @Test
    void anUrgentReferralGoesByConsentOrByARecordedOverride() {
        LetterCases.Made made = cases.make();
        Visitor visitor = draft(made, "urgent_referral", made.doctorKey());
        String path = made.letters() + "/1";
        assertTrue(visitor.page().select("[name=text-background]").text().contains("Pregnancy"), "a doctor may have the history");
        save(visitor, path, REFERRAL);
        sign(visitor, path, Map.of());
        assertEquals(422, visitor.status());
        visitor.open(path);
        visitor.submit(path + "/record/override", Map.of("ground", "vital_interests"));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#decidedBy-error").text().contains("missing"));
        visitor.submit(path + "/record/override", Map.of("ground", "vital_interests", "decidedBy", "T. Okoro-Vale", "groundText", "cord at risk",
                "what", "findings, to the doctor", "whyNoConsent", "not able to answer", "workerTold", "will be told by telephone"));
        assertEquals(200, visitor.status(), visitor.page().text());
        sign(visitor, path, Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().text().contains("Override, on the ground of threat to life"));
        String text = PrintedPages.text(pdf(visitor, made));
        assertTrue(text.contains("not a diagnosis") && text.contains("your medical judgement"), text);
    }

    @Test
    void sendingNeedsTheConsentOnThatDay() {
        LetterCases.Made made = cases.make();
        Visitor visitor = signedReport(made);
        String sent = made.letters() + "/1/record/sent";
        visitor.submit(sent, Map.of("answer", "sent", "happenedOn", LocalDate.now().minusDays(15).toString(), "how", "by post"));
        assertEquals(422, visitor.status());
        visitor.open(made.letters() + "/1");
        visitor.submit(sent, Map.of("answer", "sent", "happenedOn", LocalDate.now().toString(), "how", "by post"));
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
        assertEquals(3, visitor.page().select("input[name=tick]").size());
        visitor.submit(path, Map.of("until", "1 Jan 2020", "how", "spoken"));
        assertEquals(422, visitor.status());
        visitor.submit(path, Map.of("until", LocalDate.now().plusDays(30).toString()), Map.of("tick", List.of("SYMPTOMS", "PAIN_SCORES")));
        assertEquals(200, visitor.status(), visitor.page().text());
        String row = visitor.page().select("section:has(#consents) table").text();
        assertTrue(row.contains("Symptoms and where they are") && !row.contains("Pain scores"), row);
    }

    @Test
    void whatIsNotThereIsNotFound() {
        LetterCases.Made made = cases.make();
        Visitor visitor = draft(made, "employer_report", made.employerKey());
        for (String path : List.of("/2", "/1/file/page-9.png", "/1/file/letter.pdf", "/new/no_such_kind")) {
            visitor.open(made.letters() + path);
            assertEquals(404, visitor.status(), path);
        }
        LetterCases.Made other = cases.make();
        visitor.open(other.letters() + "/1");
        assertEquals(404, visitor.status());
    }
}
