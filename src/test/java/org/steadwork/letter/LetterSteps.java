package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** The steps a clinician takes from a draft to a signed letter. */
@ApplicationScoped
class LetterSteps {

    /** Words of a report that an employer may have. */
    static final Map<String, String> REPORT = Map.of("text-request", "I ask for a headset by 4 December 2026.",
            "text-work_status", "Full hours and duties.", "text-can_do", "She can sit 45 minutes at a time and lift 5 kg.",
            "text-next", "I will review this on 15 January 2027. Please tell me if it is not practicable.");
    static final Map<String, String> REFERRAL = Map.of("text-situation", "Numbness of both feet since this morning.",
            "text-request", "I would be grateful for your assessment today.", "text-findings", "Reports numbness. Reflexes measured as absent on the left.",
            "text-onset", "Began 24 November 2026, 08:00; spread by noon.", "text-done", "Treatment is stopped. Told to go at once if it spreads.",
            "text-contact", "You can reach me on 0000 555 014.");

    @Inject
    TestAccounts accounts;

    @Inject
    LetterCases cases;

    Visitor draft(LetterCases.Made made, String kind, String to) {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String path = made.letters() + "/new/" + kind;
        visitor.open(path);
        visitor.submit(path, Map.of("to", to));
        assertEquals(200, visitor.status(), visitor.page().text());
        return visitor;
    }

    static void save(Visitor visitor, String path, Map<String, String> words) {
        visitor.submit(path, words, Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    static void saveReport(Visitor visitor, String path) {
        visitor.submit(path, REPORT, Map.of("rows-modifications", List.of("Headset", "2 h of calls a day", "4 Dec 2026", "15 Jan 2027")));
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    void shown(Visitor visitor, String path, String answer) {
        visitor.submit(path + "/record/shown", Map.of("answer", answer, "happenedOn", cases.today().toString(), "how", "in the visit"));
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    /** Presses the sign button: it sends the editor's form to another address. */
    static void sign(Visitor visitor, String path, Map<String, String> more) {
        Map<String, String> changes = new LinkedHashMap<>(Map.of("password", TestAccounts.PASSWORD));
        changes.putAll(more);
        visitor.page().select("form#edit").attr("action", path + "/sign");
        visitor.submit(path + "/sign", changes);
    }

    Visitor signedReport(LetterCases.Made made) {
        cases.consent(made, cases.employer(made), cases.today().plusDays(5));
        Visitor visitor = draft(made, "employer_report", made.employerKey());
        saveReport(visitor, made.letters() + "/1");
        shown(visitor, made.letters() + "/1", "agreed");
        sign(visitor, made.letters() + "/1", Map.of());
        assertEquals(200, visitor.status(), visitor.page().text());
        return visitor;
    }

    static byte[] pdf(Visitor visitor, LetterCases.Made made) {
        visitor.open(made.letters() + "/1/file/letter.pdf");
        assertEquals(200, visitor.status());
        return visitor.answer().asByteArray();
    }
}
