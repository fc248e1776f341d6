package org.steadwork.meeting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Account;
import org.steadwork.account.Role;
import org.steadwork.casefile.access.ByCareTeam;
import org.steadwork.web.FullCase;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** Review meetings where cases open to their care team: who takes part sees the agenda's cases, in the meeting and nowhere else. */
@QuarkusTest
@Tag("long")
@Tag("own-clinic")
@TestProfile(ByCareTeam.class)
class MeetingByCareTeamTest {

    @Inject
    TestAccounts accounts;

    @Inject
    FullCase cases;

    private void without(Account account, String meeting, Visitor lead) {
        lead.open(meeting + "/edit");
        List<String> who = lead.page().select("input[name=who][checked]").eachAttr("value").stream().filter(value -> !value.equals(account.id().toString())).toList();
        String leads = accounts.of(Role.LEAD).id().toString();
        lead.submit(meeting + "/edit", Map.of("chair", leads, "notes", leads), Map.of("who", who));
        assertEquals(200, lead.status(), lead.page().text());
    }

    @Test
    void whoDoesNotTakePartSeesNothingOfItsCases() {
        FullCase.Made made = cases.make("Odalys", "Meeting-Outside");
        String meeting = "/meetings/" + made.parts().get("meeting");
        Visitor stranger = accounts.visitor(accounts.fresh(Role.CLINICIAN));
        for (String path : List.of("", "/cases/" + made.caseId(), "/show", "/show/" + made.caseId(), "/file/pack.pdf", "/file/minutes.pdf", "/close", "/edit")) {
            stranger.open(meeting + path);
            assertEquals(403, stranger.status(), path);
            assertEquals("Outside the meeting", stranger.page().select("h1").text(), path);
            assertFalse(stranger.page().text().contains("Meeting-Outside") || stranger.page().text().contains("Phone."), path);
        }
        stranger.open("/meetings");
        assertEquals(200, stranger.status());
        assertTrue(stranger.page().select("a[href='/meetings/new']").isEmpty(), "taking part opens cases, so the lead plans");
        assertTrue(stranger.page().select("a[href*='/cases/" + made.caseId() + "/']").isEmpty(), "nor an action agreed about a closed case");
        stranger.open("/meetings/new");
        assertEquals(403, stranger.status());
    }

    @Test
    void whoTakesPartSeesTheCaseInTheMeetingAndNotItsFile() {
        Account colleague = accounts.fresh(Role.CLINICIAN);
        FullCase.Made made = cases.make("Odo", "Meeting-Inside");
        String meeting = "/meetings/" + made.parts().get("meeting");
        Visitor visitor = accounts.visitor(colleague);
        visitor.open(meeting + "/cases/" + made.caseId());
        assertEquals(200, visitor.status(), "the lead planned it with all clinicians: " + visitor.page().text());
        visitor.open("/cases/" + made.caseId());
        assertEquals(403, visitor.status());
        assertEquals("Outside the care team", visitor.page().select("h1").text());
        without(colleague, meeting, accounts.visitor(Role.LEAD));
        visitor.open(meeting);
        assertEquals(403, visitor.status(), "taken off, they see it no more");
    }

    @Test
    void aCaseIsPutOnByThoseToWhomItIsOpen() {
        Account colleague = accounts.fresh(Role.CLINICIAN);
        FullCase.Made made = cases.make("Oriel", "Meeting-Put-On");
        String meeting = "/meetings/" + made.parts().get("meeting");
        Visitor lead = accounts.visitor(Role.LEAD);
        FullCase.Made other = cases.make("Orin", "Meeting-Not-Theirs");
        String number = lead.open("/cases/" + other.caseId()).select(".rail__id").text().replaceAll(".*File ", "");
        lead.open(meeting);
        lead.submit(meeting + "/agenda/remove", Map.of("case", other.caseId(), "why", "Not today"));
        Visitor visitor = accounts.visitor(colleague);
        visitor.open(meeting);
        assertEquals(200, visitor.status(), visitor.page().text());
        visitor.submit(meeting + "/agenda/add", Map.of("number", number));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().text().contains("This case is closed to you."), visitor.page().text());
        lead.open(meeting);
        lead.submit(meeting + "/agenda/add", Map.of("number", number));
        assertEquals(200, lead.status(), lead.page().text());
    }

    @Test
    void countsOfTheCaseloadStayAndNameNobody() {
        FullCase.Made made = cases.make("Ozias", "Meeting-Caseload");
        Visitor stranger = accounts.visitor(accounts.fresh(Role.CLINICIAN));
        for (String path : List.of("/caseload", "/caseload/time", "/caseload/work-place", "/caseload/quality")) {
            stranger.open(path);
            assertEquals(200, stranger.status(), path);
            assertFalse(stranger.page().text().contains("Meeting-Caseload"), path);
            assertTrue(stranger.page().select("main a[href^='/cases/'], main a[href^='/patients/']").isEmpty(), "a figure leads to no case: " + made.caseId());
        }
    }
}
