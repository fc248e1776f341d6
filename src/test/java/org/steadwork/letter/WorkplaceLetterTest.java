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
import org.steadwork.letter.pdf.PrintedPages;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** What was found at the work place, on its way into a letter. */
@QuarkusTest
class WorkplaceLetterTest {

    @Inject
    TestAccounts accounts;

    @Inject
    LetterCases cases;

    @Inject
    LetterSteps steps;

    /** Assesses a seat that is far too high, with no footrest. */
    private Visitor assessed(LetterCases.Made made) {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String edit = "/cases/" + made.caseId() + "/work-place/edit";
        visitor.open(edit);
        Map<String, String> measures = Map.of("assessedOn", cases.today().toString(), "popliteal_height", "391",
                "shoe", "20", "seat_now", "520", "seat_low", "500", "seat_high", "530", "PH-1", "does_not_fit");
        visitor.submit(edit, known(visitor, measures));
        assertEquals(200, visitor.status(), visitor.page().select(".notice").text());
        return visitor;
    }

    private static Map<String, String> known(Visitor visitor, Map<String, String> values) {
        values.keySet().forEach(field -> assertFalse(visitor.page().select("[name=" + field + "]").isEmpty(), field + " not in "
                + visitor.page().select("[name]").eachAttr("name")));
        return values;
    }

    @Test
    void aFindingGoesIntoTheReportOnceAndInWorkTerms() {
        LetterCases.Made made = cases.make();
        Visitor visitor = assessed(made);
        String finding = visitor.page().select("a[href*=/findings/]").attr("href");
        String put = "/cases/" + made.caseId() + "/letters/finding/" + finding.replaceAll(".*/", "");
        String name = visitor.open(finding).select("h1").text();
        visitor.submit(put, Map.of());
        assertEquals("Report to the employer", visitor.page().select("h1").text());
        List<String> changes = visitor.page().select("[name=rows-modifications]").eachAttr("value");
        assertTrue(changes.stream().anyMatch(cell -> cell.startsWith(name + ": ")), name + " in " + changes);
        List<String> found = visitor.page().select("[name=rows-workplace]").eachAttr("value");
        assertEquals(1, found.stream().filter(name::equals).count(), found.toString());

        visitor.open(finding);
        visitor.submit(put, Map.of());
        List<String> again = visitor.page().select("[name=rows-modifications]").eachAttr("value");
        assertEquals(changes, again, "put in twice, it stands once");
        assertTrue(visitor.open(made.letters()).select("td[data-label=No.]").size() == 1, "one draft");
    }

    @Test
    void theSignedReportShowsWhatWasFoundAndNothingOfTheBody() {
        LetterCases.Made made = cases.make();
        Visitor visitor = assessed(made);
        String label = visitor.page().select("a[href*=/findings/]").first().text();
        assertFalse(label.isBlank());
        Visitor writer = steps.signedReport(made);
        String text = PrintedPages.text(LetterSteps.pdf(writer, made)).replaceAll("\\s+", " ");
        assertTrue(text.contains("What was looked at What is advised How far it has come"), text);
        assertTrue(text.contains("found " + org.steadwork.web.Dates.inLetter(cases.today()).replace('\u00a0', ' '))
                || text.contains("found " + org.steadwork.web.Dates.inLetter(cases.today())), text);
        assertFalse(text.contains("391"), "a measure of the body in " + text);
    }
}
