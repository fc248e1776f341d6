package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import jakarta.inject.Inject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.pdfbox.preflight.parser.PreflightParser;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.letter.pdf.LetterPdf;
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** What a signed letter must hold to on every database: archivable, one signature, never changed. */
abstract class SignedLetterContract {

    @Inject
    TestAccounts accounts;

    @Inject
    LetterCases cases;

    @Inject
    LetterSteps steps;

    @Test
    void aSignedReportIsArchivableAndHoldsNothingClinical() throws Exception {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.signedReport(made);
        String shownFingerprint = visitor.page().select(".fingerprint").text();
        byte[] file = LetterSteps.pdf(visitor, made);
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
        for (String clinical : List.of("neck", "shoulder", "ache", "pain", "pregnan", "red flag", "NDI", "QuickDASH", "PSFS", "/10", "7 days", "right", "held back", "Draft")) {
            assertFalse(text.toLowerCase().contains(clinical.toLowerCase()), clinical + " in:\n" + text);
        }
    }

    @Test
    void twoCliniciansSigningAtOnceMakeOneSignature() throws Exception {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), cases.today().plusDays(5));
        Visitor first = steps.draft(made, "employer_report", made.employerKey());
        LetterSteps.saveReport(first, made.letters() + "/1");
        steps.shown(first, made.letters() + "/1", "agreed");
        Visitor second = accounts.visitor(Role.LEAD);
        second.open(made.letters() + "/1");
        CountDownLatch go = new CountDownLatch(1);
        ExecutorService two = Executors.newFixedThreadPool(2);
        List<Future<Integer>> answers = List.of(first, second).stream().map(visitor -> two.submit(() -> {
            go.await();
            LetterSteps.sign(visitor, made.letters() + "/1", Map.of());
            return visitor.status();
        })).toList();
        go.countDown();
        List<Integer> statuses = List.of(answers.get(0).get(), answers.get(1).get()).stream().sorted().toList();
        two.shutdown();
        assertEquals(List.of(200, 409), statuses);
        assertEquals(1, cases.signatures(made));
    }

    /** One saves while the other signs: whichever comes first, there is at most one signature and nobody's words are gone. */
    @Test
    void savingAndSigningAtOnceLosesNoText() throws Exception {
        for (int round = 0; round < 4; round++) {
            LetterCases.Made made = cases.make();
            cases.consent(made, cases.employer(made), cases.today().plusDays(5));
            Visitor signer = steps.draft(made, "employer_report", made.employerKey());
            LetterSteps.saveReport(signer, made.letters() + "/1");
            steps.shown(signer, made.letters() + "/1", "agreed");
            Visitor writer = accounts.visitor(Role.LEAD);
            writer.open(made.letters() + "/1");
            String words = "She can lift 7 kg, written in round " + round + ".";
            CountDownLatch go = new CountDownLatch(1);
            ExecutorService two = Executors.newFixedThreadPool(2);
            Future<Integer> signed = two.submit(() -> {
                go.await();
                LetterSteps.sign(signer, made.letters() + "/1", Map.of());
                return signer.status();
            });
            Future<Integer> saved = two.submit(() -> {
                go.await();
                writer.submit(made.letters() + "/1", Map.of("text-can_do", words));
                return writer.status();
            });
            go.countDown();
            int signature = signed.get();
            int save = saved.get();
            two.shutdown();
            assertTrue(signature == 200 && save == 409 || save == 200 && (signature == 409 || signature == 422), "signing " + signature + ", saving " + save);
            assertEquals(signature == 200 ? 1 : 0, cases.signatures(made));
            assertTrue(writer.page().wholeText().contains(words) || writer.page().select("[name=text-can_do]").text().equals(words),
                    "the words of the writer, after " + save + ": " + writer.page().text());
        }
    }

    @Test
    void aSignedLetterCannotBeChangedByAnyPath() {
        LetterCases.Made made = cases.make();
        Visitor visitor = accounts.visitor(Role.LEAD);
        cases.consent(made, cases.employer(made), cases.today().plusDays(5));
        Visitor writer = steps.draft(made, "employer_report", made.employerKey());
        visitor.open(made.letters() + "/1");
        writer.open(made.letters() + "/1");
        LetterSteps.saveReport(writer, made.letters() + "/1");
        steps.shown(writer, made.letters() + "/1", "agreed");
        LetterSteps.sign(writer, made.letters() + "/1", Map.of());
        byte[] before = LetterSteps.pdf(writer, made);
        visitor.submit(made.letters() + "/1", Map.of("text-can_do", "Changed after signing."));
        assertEquals(409, visitor.status());
        assertTrue(visitor.page().text().contains("signed meanwhile"));
        assertEquals(0, visitor.page().select("form#edit").size());
        assertTrue(cases.refuses(() -> cases.writeThroughTheEntity(made)), "the entity");
        assertTrue(cases.refuses(() -> cases.execute("update letter set texts = '{}', version = version + 1 where case_file_id = " + made.caseId())), "a new version");
        assertTrue(cases.refuses(() -> cases.execute("delete from letter where case_file_id = " + made.caseId())), "removal");
        assertTrue(cases.signedEntityIgnoresChanges(made), "the signed entity");
        assertArrayEquals(before, LetterSteps.pdf(writer, made));
    }

    @Test
    void aFileThatWasTamperedWithIsNotHandedOut() {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.signedReport(made);
        cases.execute("update signed_letter set pdf = cast('" + "00".repeat(40) + "' as bytea) where letter_id in (select id from letter where case_file_id = "
                + made.caseId() + ")");
        visitor.open(made.letters() + "/1/file/letter.pdf");
        assertEquals(500, visitor.status());
        assertEquals("Not handed out", visitor.page().select("h1").text());
        assertTrue(visitor.page().text().contains("is not the one that was signed"), visitor.page().text());
        visitor.open(made.letters() + "/1/file/page-1.png");
        assertEquals("Not handed out", visitor.page().select("h1").text());
        visitor.open(made.letters() + "/1");
        assertTrue(visitor.page().text().contains("not the one that was signed"), visitor.page().text());
    }
}
