package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class RegisterPagesTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    Statements statements;

    @Test
    void theAssistantKeepsEmployersContactsAndSites() {
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        String employer = RegisterVisit.employer(assistant, "Fernhollow Bindery");
        assistant.open("/employers?q=hollow");
        assertTrue(assistant.page().text().contains("No employer found"), "a word is found from its start");
        assistant.open("/employers?q=fernh");
        assertTrue(assistant.page().select("table").text().contains("Fernhollow Bindery"));
        RegisterVisit.send(assistant, employer + "/contacts/new", Map.of("name", "Oona Marl", "role", "Binder", "email", "oona@fern.example"));
        assertTrue(assistant.page().text().contains("oona@fern.example"));
        String contact = assistant.page().select("a[href*=/contacts/]").first().attr("href");
        assistant.open(contact);
        assistant.submit(contact + "/retire", Map.of());
        assertTrue(assistant.page().text().contains("out of use since"));
        assistant.open(contact);
        assistant.submit(contact + "/bring-back", Map.of());
        assertFalse(assistant.page().text().contains("out of use since"));
        assistant.open("/employers/new");
        assistant.submit("/employers/new", Map.of("name", "fernhollow  BINDERY"));
        assertEquals(422, assistant.status());
        assertTrue(assistant.page().select("#name-error").text().contains("there already"));
    }

    @Test
    void aRetiredEmployerIsNotOfferedAndComesBack() {
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        String employer = RegisterVisit.employer(assistant, "Larchmere Pottery");
        assistant.open(employer);
        assistant.submit(employer + "/retire", Map.of());
        assertTrue(assistant.page().text().contains("Out of use since"));
        assistant.open("/patients/new");
        assertTrue(assistant.page().select("#employers option[value=Larchmere Pottery]").isEmpty());
        assistant.open(employer);
        assistant.submit(employer + "/bring-back", Map.of());
        assistant.open("/patients/new");
        assertEquals(1, assistant.page().select("#employers option[value=Larchmere Pottery]").size());
    }

    @Test
    void ofTwoWhoChangeOneTheSecondSeesBoth() {
        Visitor one = accounts.visitor(Role.ASSISTANT);
        Visitor two = accounts.visitor(Role.CLINICIAN);
        String employer = RegisterVisit.employer(one, "Mossgate Weavers");
        both(one, two, employer + "/edit", "phone", "01632 1", "01632 2");
        String room = RegisterVisit.site(one, employer, "Loom hall");
        both(one, two, room, "note", "Bright", "Dark");
        String desk = RegisterVisit.piece(one, room, "desk", Map.of("name", "Desk 1", "desk_low", "700", "desk_high", "700"));
        both(one, two, desk + "/edit", "desk_width", "1400", "1600");
    }

    private static void both(Visitor one, Visitor two, String path, String field, String first, String second) {
        one.open(path);
        two.open(path);
        one.submit(path, Map.of(field, first));
        assertEquals(200, one.status(), one.page().text());
        two.submit(path, Map.of(field, second));
        assertEquals(409, two.status(), path);
        assertTrue(two.page().select("#" + field + "-stored").text().contains(first), path);
        assertTrue(two.page().text().contains(second) || two.page().select("#" + field).val().equals(second), path);
        two.submit(path, Map.of());
        assertEquals(200, two.status());
    }

    @Test
    void sizesKeepHowAndWhenTheyWereKnown() {
        Visitor visitor = accounts.visitor(Role.ASSISTANT);
        String room = RegisterVisit.site(visitor, RegisterVisit.employer(visitor, "Netherby Clocks"), "Bench");
        visitor.open(room + "/furniture?kind=chair");
        visitor.submit(room + "/furniture", Map.of("name", "Blue", "seat_low", "500", "seat_high", "400"));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#seat_high-error").text().contains("500 and 400"));
        visitor.submit(room + "/furniture", Map.of("seat_low", "400", "seat_high", ""));
        assertTrue(visitor.page().select("#seat_high-error").text().contains("both ends"));
        visitor.submit(room + "/furniture", Map.of("seat_high", "510", "knownOn", "3 Feb 2026", "how", "told"));
        assertEquals(200, visitor.status());
        assertTrue(visitor.page().text().contains("told, not measured, 3 Feb 2026"), visitor.page().text());
        String chair = "/furniture/" + visitor.page().select("a[href$=/edit]").attr("href").replaceAll("\\D", "");
        visitor.open(chair + "/edit");
        visitor.submit(chair + "/edit", Map.of("seat_high", "520", "knownOn", "4 Mar 2026", "how", "measured"));
        String sizes = visitor.page().select("table").text();
        assertTrue(sizes.contains("400 mm told, not measured, 3 Feb 2026"), sizes);
        assertTrue(sizes.contains("520 mm measured, 4 Mar 2026"), sizes);
    }

    @Test
    void theSecondWorkerStartsFromTheRegisteredDesk() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String employer = RegisterVisit.employer(visitor, "Orrisdale Maps");
        String room = RegisterVisit.site(visitor, employer, "Map room");
        String desk = RegisterVisit.piece(visitor, room, "desk", Map.of("name", "Desk 7", "desk_low", "740", "desk_high", "740", "top_thickness", "28", "desk_depth", "800",
                "screen_low", "380", "screen_high", "510"));
        String chair = RegisterVisit.piece(visitor, room, "chair", Map.of("name", "Grey", "seat_low", "400", "seat_high", "530", "seat_step", "10"));
        long id = working("Gwendolyn", "Tarrant", "Orrisdale Maps");
        String edit = "/cases/" + id + "/work-place/edit";
        visitor.open(edit + "?desk=" + number(desk) + "&chair=" + number(chair));
        assertEquals("740", visitor.page().select("#desk_now").val(), "a fixed desk stands as it always stands");
        assertEquals("740", visitor.page().select("#desk_high").val());
        assertEquals("800", visitor.page().select("#DK-4").val());
        assertEquals("10", visitor.page().select("#seat_step").val());
        assertEquals("", visitor.page().select("#seat_now").val(), "how the chair is set today is this person's");
        assertTrue(visitor.page().select("#top_thickness-hint").text().startsWith("Register: 28 mm, measured"));
        visitor.open(edit);
        visitor.submit(edit, Map.of("do", "fill"));
        assertEquals(422, visitor.status());
        visitor.submit(edit, Map.of("desk", number(desk), "top_thickness", "35", "do", "fill"));
        assertEquals(200, visitor.status());
        assertEquals("35", visitor.page().select("#top_thickness").val(), "what was typed stays");
        assertEquals("380", visitor.page().select("#screen_low").val());
        visitor.submit(edit, Map.of("assessedOn", "4 Mar 2026", "popliteal_height", "370", "elbow_rest_height", "240", "chair", number(chair), "do", "save",
                "seat_now", "450", "seat_low", "410", "seat_high", "530"));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(visitor.page().text().contains("2 sizes differ from the register"), visitor.page().select("main").text());
        writeBack(visitor, id, desk, chair);
        visitor.open(desk);
        assertTrue(visitor.page().text().contains("Gwendolyn Tarrant"));
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        for (String path : List.of(desk, chair, room.replaceAll("/rooms.*", ""))) {
            assistant.open(path);
            assertEquals(200, assistant.status());
            assertFalse(assistant.page().text().contains("Tarrant"), path);
        }
    }

    private static void writeBack(Visitor visitor, long id, String desk, String chair) {
        String path = "/cases/" + id + "/work-place/register";
        visitor.open(path);
        assertEquals(2, visitor.page().select("input[name=take]").size());
        assertTrue(visitor.page().select("table").text().contains("+7 mm"), visitor.page().select("table").text());
        visitor.submit(path, Map.of("do", "take"), Map.of("take", List.of()));
        assertEquals(422, visitor.status());
        visitor.open(path);
        Visitor other = visitor;
        other.submit(path, Map.of("do", "take"), Map.of("take", List.of("desk.top_thickness")));
        assertEquals(200, visitor.status());
        visitor.open(desk);
        assertTrue(visitor.page().select("tr:contains(Thickness)").text().contains("35 mm measured, 4 Mar 2026"));
        visitor.open(chair);
        assertTrue(visitor.page().select("tr:contains(Seat height, lowest)").text().contains("400 mm"), "what was not ticked stays");
    }

    @Test
    void differencesTickedAgainstOldNumbersAreAskedAgain() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String room = RegisterVisit.site(visitor, RegisterVisit.employer(visitor, "Pellmere Press"), "Press room");
        String desk = RegisterVisit.piece(visitor, room, "desk", Map.of("name", "Desk 9", "desk_low", "700", "desk_high", "700"));
        long id = working("Hildred", "Vosper", "Pellmere Press");
        visitor.open("/cases/" + id + "/work-place/edit");
        visitor.submit("/cases/" + id + "/work-place/edit", Map.of("assessedOn", "4 Mar 2026", "desk", number(desk), "desk_low", "720", "desk_high", "720", "do", "save"));
        String path = "/cases/" + id + "/work-place/register";
        visitor.open(path);
        Visitor other = accounts.visitor(Role.ASSISTANT);
        other.open(desk + "/edit");
        other.submit(desk + "/edit", Map.of("desk_low", "710", "desk_high", "710"));
        visitor.submit(path, Map.of("do", "take"));
        assertEquals(409, visitor.status());
        assertTrue(visitor.page().text().contains("710 mm"));
        visitor.submit(path, Map.of("do", "take"));
        assertEquals(200, visitor.status());
    }

    @Test
    void anAssessedDeskIsAddedToTheRegister() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String room = RegisterVisit.site(visitor, RegisterVisit.employer(visitor, "Quernstone Mill"), "Office");
        long id = working("Isolde", "Penrose", "Quernstone Mill");
        visitor.open("/cases/" + id + "/work-place/edit");
        visitor.submit("/cases/" + id + "/work-place/edit", Map.of("assessedOn", "4 Mar 2026", "desk_low", "720", "desk_high", "720", "seat_low", "400", "seat_high",
                "500", "do", "save"));
        String path = "/cases/" + id + "/work-place/register";
        visitor.open(path);
        visitor.submit(path, Map.of("do", "add"));
        assertEquals(422, visitor.status());
        visitor.submit(path, Map.of("do", "add", "room", number(room), "newdesk", "Window desk"));
        assertEquals(200, visitor.status());
        assertTrue(visitor.page().select("section:has(#s-register)").text().contains("Window desk"));
        visitor.open(visitor.page().select("section:has(#s-register) a[href^=/furniture/]").attr("href"));
        assertTrue(visitor.page().select("table").text().contains("720 mm measured"));
    }

    @Test
    void aSiteTakesAsManyStatementsForMuchAsForLittle() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String few = RegisterVisit.site(visitor, RegisterVisit.employer(visitor, "Rushmere Few"), "One");
        RegisterVisit.piece(visitor, few, "desk", Map.of("name", "Desk", "desk_low", "700", "desk_high", "700"));
        String many = RegisterVisit.site(visitor, RegisterVisit.employer(visitor, "Rushmere Many"), "One");
        for (int i = 0; i < 6; i++) {
            RegisterVisit.piece(visitor, many, i % 2 == 0 ? "desk" : "chair", Map.of("name", "Piece " + i));
        }
        String little = few.replaceAll("/rooms.*", "");
        String much = many.replaceAll("/rooms.*", "");
        visitor.open(much);
        assertEquals(statements.during(() -> visitor.open(little)), statements.during(() -> visitor.open(much)));
        assertEquals(statements.during(() -> visitor.open("/employers?q=rushmere few")), statements.during(() -> visitor.open("/employers")));
    }

    private long working(String given, String family, String employer) {
        long id = cases.open(given, family);
        RegisterVisit.employ(accounts.visitor(Role.LEAD), id, employer);
        return id;
    }

    private static String number(String path) {
        return path.replaceAll(".*/(\\d+)$", "$1");
    }
}
