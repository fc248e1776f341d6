package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.pdf.LetterPdf;
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** The way of a letter after it is signed, and the letters that need no consent. */
@QuarkusTest
class LetterChainTest {

    @Inject
    TestAccounts accounts;

    @Inject
    LetterCases cases;

    @Inject
    LetterSteps steps;

    @Inject
    CheckLetter command;

    @Test
    void anAnswerHopedForIsAskedForInTodayUntilItComes() {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.signedReport(made);
        String sent = made.letters() + "/1/record/sent";
        visitor.submit(sent, Map.of("answer", "answered", "happenedOn", cases.today().toString(), "how", "by post"));
        assertEquals(422, visitor.status(), "no answer without a sending");
        visitor.open(made.letters() + "/1");
        visitor.submit(sent, Map.of("answer", "sent", "happenedOn", cases.today().minusDays(4).toString(), "how", "by post",
                "replyBy", cases.today().minusDays(6).toString()));
        assertEquals(422, visitor.status(), "an answer before the sending");
        visitor.open(made.letters() + "/1");
        visitor.submit(sent, Map.of("answer", "sent", "happenedOn", cases.today().minusDays(4).toString(), "how", "by post",
                "replyBy", cases.today().minusDays(1).toString()));
        assertEquals(200, visitor.status(), visitor.page().text());
        String chased = "a[href=" + made.letters() + "/1]";
        assertEquals(1, visitor.open("/").select(chased).size(), "Today asks for it");
        visitor.open(made.letters() + "/1");
        visitor.submit(sent, Map.of("answer", "answered", "happenedOn", cases.today().toString(), "how", "by post", "note", "Headset is ordered"));
        assertEquals(0, visitor.open("/").select(chased).size(), "the answer takes it off");
    }

    @Test
    void aWrongLetterIsPutRightByASecondOneThatNamesIt() {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.signedReport(made);
        visitor.submit(made.letters() + "/1/record/replaced", Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
        String second = made.letters() + "/2";
        assertEquals("She can sit 45 minutes at a time and lift 5 kg.", visitor.page().select("[name=text-can_do]").text());
        LetterSteps.save(visitor, second, Map.of("text-can_do", "She can sit 30 minutes at a time and lift 5 kg."));
        steps.shown(visitor, second, "agreed");
        LetterSteps.sign(visitor, second, Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
        visitor.open(second + "/file/letter.pdf");
        String text = PrintedPages.text(visitor.answer().asByteArray()).replaceAll("\\s+", " ");
        assertTrue(text.contains("takes the place of our letter") && text.contains("/1, which should no longer be relied on"), text);
        String first = visitor.open(made.letters() + "/1").text();
        assertTrue(first.contains("Not to be relied on") && first.contains("takes its place"), first);
        assertEquals(0, visitor.page().select("form[action$=replaced]").size(), "one second letter");
    }

    @Test
    void aWithdrawnConsentMarksWhatWasSentBefore() {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.signedReport(made);
        String withdraw = visitor.open(made.letters()).select("a[href$=/withdraw]").attr("href");
        visitor.open(withdraw);
        visitor.submit(withdraw, Map.of("how", "by telephone"));
        assertTrue(visitor.page().select("section:has(#letters)").text().contains("consent withdrawn"), visitor.page().text());
        assertTrue(visitor.open(made.letters() + "/1").text().contains("cannot be called back"), visitor.page().text());
        visitor.submit(made.letters() + "/1/record/sent", Map.of("answer", "sent", "happenedOn", cases.today().toString(), "how", "by post"));
        assertEquals(422, visitor.status(), "nothing more goes there");
    }

    @Test
    void aFileIsKnownByItsFingerprintAndAChangedOneIsNot() throws Exception {
        LetterCases.Made made = cases.make();
        Visitor visitor = steps.signedReport(made);
        byte[] pdf = LetterSteps.pdf(visitor, made);
        byte[] changed = pdf.clone();
        changed[changed.length / 2] ^= 1;
        visitor.open("/letters/check");
        visitor.submit("/letters/check", Map.of("fingerprint", "SHA-256 " + LetterPdf.sha256(pdf).toUpperCase()));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertEquals("Signed here", visitor.page().select("main h2").first().text());
        assertTrue(visitor.page().text().contains("reference SW-"), visitor.page().text());
        visitor.submit("/letters/check", Map.of("fingerprint", LetterPdf.sha256(changed)));
        assertEquals("Not signed here", visitor.page().select("main h2").first().text());
        visitor.submit("/letters/check", Map.of("fingerprint", "abc"));
        assertEquals(422, visitor.status());
        assertEquals("abc", visitor.page().select("#fingerprint").val());

        Path file = Files.createTempFile("letter", ".pdf");
        Files.write(file, pdf);
        assertTrue(said(0, file.toString()).contains("Signed here on"));
        Files.write(file, changed);
        assertTrue(said(1, file.toString()).contains("No letter with this fingerprint was signed here"));
        Files.delete(file);
        assertTrue(said(2, file.toString()).contains("cannot be read"));
        assertTrue(said(2).contains("takes one file"));
    }

    private String said(int code, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertEquals(code, command.check(words, new PrintStream(out, true, StandardCharsets.UTF_8)));
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void theDraftsOfADayAreSignedTogetherIfNothingIsInTheWay() {
        LetterCases.Made ready = cases.make();
        LetterCases.Made open = cases.make();
        cases.consent(ready, cases.employer(ready), cases.today().plusDays(5));
        Visitor visitor = steps.draft(ready, "employer_report", ready.employerKey());
        LetterSteps.saveReport(visitor, ready.letters() + "/1");
        steps.shown(visitor, ready.letters() + "/1", "agreed");
        steps.draft(open, "employer_report", open.employerKey());
        visitor.open("/letters");
        assertEquals(1, visitor.page().select("section:has(a[href=" + open.letters() + "/1])").size(), "the unready one is there");
        assertEquals(0, visitor.page().select("section:has(a[href=" + open.letters() + "/1]) input[name=sign]").size(), "without a box");
        String tick = visitor.page().select("section:has(a[href=" + ready.letters() + "/1]) input[name=sign]").val();
        assertFalse(tick.isEmpty(), visitor.page().text());
        visitor.submit("/letters", Map.of("password", "wrong"), Map.of("sign", List.of(tick)));
        assertEquals(422, visitor.status());
        assertEquals(0, cases.signatures(ready));
        visitor.submit("/letters", Map.of("password", TestAccounts.PASSWORD), Map.of("sign", List.of(tick)));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertEquals(1, cases.signatures(ready));
        assertTrue(visitor.page().select("[role=status]").text().startsWith("Signed: SW-"), visitor.page().text());
    }

    @Test
    void lettersToTheWorkerNeedNoConsent() {
        LetterCases.Made made = cases.make();
        cases.fill(made);
        Visitor visitor = steps.draft(made, "patient_letter", "worker");
        assertTrue(visitor.page().select("[name=text-exercises]").text().contains(": "), visitor.page().select("form#edit").text());
        assertTrue(visitor.page().select("[name=text-greeting]").text().equals("Dear Åse,"), visitor.page().select("form#edit").text());
        LetterSteps.save(visitor, made.letters() + "/1", Map.of("text-think", "Your neck and shoulder are tired. It is not dangerous.",
                "text-next", "Your next visit is on 15 December. You can phone us on 0000 555 014."));
        LetterSteps.sign(visitor, made.letters() + "/1", Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());

        Visitor copy = steps.draft(made, "record_copy", "worker");
        String words = copy.page().select("form#edit textarea").text();
        assertTrue(words.contains("Neck Disability Index") && words.contains("Pregnancy in 2019"), words);
    }

    @Test
    void aConfirmationOfAttendanceGoesToTheEmployerByTickOnly() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.employer(made), cases.today().plusDays(5));
        Visitor visitor = steps.draft(made, "attendance_confirmation", made.employerKey());
        assertTrue(visitor.page().select("#checks").text().contains("only if the worker ticks it"), visitor.page().select("#checks").text());
        assertEquals(0, visitor.page().select("[name=rows-visits]").size());
        cases.consent(made, cases.employer(made), cases.today().plusDays(5), InformationCategory.ATTENDANCE);
        Visitor ticked = steps.draft(made, "attendance_confirmation", made.employerKey());
        assertTrue(ticked.page().select("[name=rows-visits]").eachAttr("value").contains("attended"), ticked.page().select("form#edit").html());
    }

    @Test
    void anotherPatientsNameIsAskedAbout() {
        LetterCases.Made made = cases.make();
        cases.consent(made, cases.doctor(made), cases.today().plusDays(5));
        cases.namedPatient("Perpetua", "Ottersby");
        Visitor visitor = steps.draft(made, "routine_referral", made.doctorKey());
        LetterSteps.save(visitor, made.letters() + "/1", Map.of("text-question", "I would value your opinion, as with Perpetua Ottersby."));
        assertTrue(visitor.page().select("#checks").text().contains("“Perpetua Ottersby” may be somebody"), visitor.page().select("#checks").text());
    }
}
