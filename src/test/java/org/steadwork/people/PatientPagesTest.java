package org.steadwork.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

@QuarkusTest
class PatientPagesTest {

    @Inject
    TestAccounts accounts;

    @Test
    void whoIsNotSignedInIsSentToTheSignInPage() {
        Visitor visitor = new Visitor();
        visitor.open("/patients");
        assertTrue(visitor.page().title().startsWith("Sign in"), visitor.page().title());
    }

    @Test
    void signingInLeadsToTheCaller() {
        accounts.of(Role.CLINICIAN);
        Visitor visitor = new Visitor();
        visitor.open("/patients");
        visitor.submit("/sign-in", Map.of("userName", "test-clinician", "password", "wrong wrong wrong"));
        assertEquals(422, visitor.status());
        visitor.submit("/sign-in", Map.of("userName", "Test-Clinician", "password", TestAccounts.PASSWORD));
        assertTrue(visitor.page().title().startsWith("Patients"), visitor.page().title());
        visitor.submit("/sign-out", Map.of());
        visitor.open("/patients");
        assertTrue(visitor.page().title().startsWith("Sign in"));
    }

    @Test
    void anAssistantRegistersAPatientAndFindsThemWithASlip() {
        Visitor visitor = accounts.visitor(Role.ASSISTANT);
        register(visitor, "Zdeňka", "Quillfeather", "6 Nov 1991");
        assertEquals(200, visitor.status());
        assertEquals("Zdeňka Quillfeather", visitor.page().select("h1").text());
        assertTrue(visitor.open("/patients?q=zdenka").text().contains("Quillfeather"));
        assertTrue(visitor.open("/patients?q=qilfeather").text().contains("Zdeňka"));
        assertTrue(visitor.open("/patients?q=6.11.1991").text().contains("Quillfeather"));
        assertTrue(visitor.open("/patients?q=cliffside").text().contains("Quillfeather"));
    }

    @Test
    void aLikelyDoubleIsPointedOutBeforeSaving() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        register(visitor, "Barnaby", "Oxtoby-Lund", "1 Feb 1980");
        register(visitor, "Barnabie", "Oxtoby-Lund", "1 Feb 1980");
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().text().contains("This may be somebody we know"));
        assertEquals("Barnabie", visitor.page().select("#givenName").val());
        visitor.submit("/patients/new", Map.of("anotherPerson", "yes"));
        assertEquals("Barnabie Oxtoby-Lund", visitor.page().select("h1").text());
    }

    @Test
    void wrongInputIsAnsweredAtTheFieldAndKept() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/patients/new");
        visitor.submit("/patients/new", Map.of("givenName", "Ada", "birthDate", "31 Feb 1980", "hoursAWeek", "400"));
        assertEquals(422, visitor.status());
        assertEquals("Ada", visitor.page().select("#givenName").val());
        assertEquals("31 Feb 1980", visitor.page().select("#birthDate").val());
        assertTrue(visitor.page().select("#birthDate-error").text().contains("must be a date"));
        assertTrue(visitor.page().select("#hoursAWeek-error").text().contains("0 to 100"));
        assertEquals("true", visitor.page().select("#familyName").attr("aria-invalid"));
        assertTrue(visitor.page().select("[role=alert] a[href=#familyName]").size() == 1);
    }

    @Test
    void aStaleSaveShowsBothAndLosesNeither() {
        Visitor one = accounts.visitor(Role.CLINICIAN);
        Visitor two = accounts.visitor(Role.LEAD);
        register(one, "Isolde", "Fennimore", "2 Mar 1975");
        String edit = one.page().select("a[href$=/edit]").attr("href");
        one.open(edit);
        two.open(edit);
        one.submit(edit, Map.of("department", "Loading bay"));
        two.submit(edit, Map.of("department", "Night desk"));
        assertEquals(409, two.status());
        assertEquals("Night desk", two.page().select("#department").val());
        assertTrue(two.page().select("#department-stored").text().contains("Loading bay"));
        two.submit(edit, Map.of());
        assertTrue(two.page().text().contains("Night desk"));
    }

    @Test
    void aPostWithoutTokenIsRefused() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.post("/patients/new", Map.of("givenName", List.of("X")));
        assertEquals(400, visitor.status());
    }

    @Test
    void anUnknownNumberIsA404Page() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/patients/999999");
        assertEquals(404, visitor.status());
        assertTrue(visitor.page().text().contains("nothing at this address"));
        visitor.open("/no/such/page");
        assertEquals(404, visitor.status());
    }

    @Test
    void clinicalPagesAreNotForTheAssistant() {
        Visitor visitor = accounts.visitor(Role.ASSISTANT);
        visitor.open("/cases/1/edit");
        assertEquals(403, visitor.status());
        assertTrue(visitor.page().text().contains("may not open this page"));
    }

    private static void register(Visitor visitor, String given, String family, String born) {
        visitor.open("/patients/new");
        visitor.submit("/patients/new", Map.of("givenName", given, "familyName", family, "birthDate", born, "sex", "female", "handedness",
                "right", "employer", "Cliffside Ledger Office", "jobTitle", "clerk", "hoursAWeek", "37,5"));
    }
}
