package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

@QuarkusTest
class SharedDeskPagesTest {

    /** The two people of worked case 8. */
    private static final Map<String, String> SMALL = Map.of("popliteal_height", "370", "elbow_rest_height", "230", "eye_height_sitting", "710", "thigh_clearance", "135", "shoe", "20");
    private static final Map<String, String> TALL = Map.of("popliteal_height", "470", "elbow_rest_height", "265", "eye_height_sitting", "830", "thigh_clearance", "170", "shoe", "25");
    private static final Map<String, String> CHAIR = Map.of("seat_low", "400", "seat_high", "520");

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    Statements statements;

    @Test
    void nobodyYetSaysWhatToDo() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open(desk(visitor, "Ullock Ropes", Map.of("desk_low", "680", "desk_high", "820")) + "/people");
        assertEquals(200, visitor.status());
        assertTrue(visitor.page().text().contains("Nobody was assessed at this desk yet"));
    }

    @Test
    void oneHasNothingToShare() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String desk = desk(visitor, "Ennerdale Sails", Map.of("desk_low", "680", "desk_high", "820"));
        assess(visitor, desk, "Ennerdale Sails", "Sibley", SMALL, CHAIR);
        visitor.open(desk + "/people");
        assertTrue(visitor.page().text().contains("One person is counted in"));
        assertTrue(visitor.page().select("#s-share").isEmpty());
        assertEquals(1, visitor.page().select("section:has(#s-own) tbody tr").size());
    }

    /** Source: worked case 8 (two people at one desk), by hand, to 5 mm. */
    @Test
    void twoSetAndShareAsWorkedByHand() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String desk = desk(visitor, "Wythop Lenses", Map.of("desk_low", "680", "desk_high", "820"));
        assess(visitor, desk, "Wythop Lenses", "Sibley", SMALL, CHAIR);
        assess(visitor, desk, "Wythop Lenses", "Tolliver", TALL, CHAIR);
        visitor.open(desk + "/people");
        assertEquals(200, visitor.status());
        assertEquals(Map.of("Sibley", "480 680 90 490", "Tolliver", "495 730 none 575"), settings(visitor, "s-own"));
        assertTrue(plain(visitor.page().select("section:has(#s-share) tbody").text()).startsWith("Desk at one height 725 mm nobody"));
        Map<String, String> together = settings(visitor, "s-together");
        assertTrue(together.get("Sibley").startsWith("520 725 "), together.toString());
        assertEquals(Set.of("725"), together.values().stream().map(settings -> settings.split(" ")[1]).collect(Collectors.toSet()), "one desk");
        assertEquals(1, together.values().stream().map(settings -> settings.split(" ")[3]).distinct().count(), "one screen: " + together);
    }

    /** By family name: seat, desk, footrest, screen above the desk. */
    private static Map<String, String> settings(Visitor visitor, String section) {
        Map<String, String> settings = new HashMap<>();
        for (Element row : visitor.page().select("section:has(#" + section + ") tbody tr")) {
            settings.put(row.select("th").text().replaceFirst(".* ", ""), number(row, "Seat") + " " + number(row, "Desk") + " " + number(row, "Footrest") + " "
                    + number(row, "Screen top"));
        }
        return settings;
    }

    @Test
    void whoIsLeftOutAtAFixedDeskIsNamedWithHowMuch() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String desk = desk(visitor, "Mosser Tiles", Map.of("desk_low", "820", "desk_high", "820"));
        assess(visitor, desk, "Mosser Tiles", "Sibley", SMALL, Map.of("seat_low", "380", "seat_high", "420"));
        assess(visitor, desk, "Mosser Tiles", "Tolliver", TALL, Map.of("seat_low", "380", "seat_high", "420"));
        visitor.open(desk + "/people");
        String shared = plain(visitor.page().select("section:has(#s-share)").text());
        // seat at most 420, elbow 230: keys at 820 + 30 stand 200 above the elbow at best
        assertTrue(shared.contains("Desk as it stands") && shared.contains("Sibley keys 200 mm above the elbow, out of range by"), shared);
        assertTrue(shared.contains("left out when everything is shared"), shared);
        assertTrue(shared.contains("A desk at "), shared);
    }

    @Test
    void cardsBearMarksAndNoNames() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String desk = desk(visitor, "Hobcarton Bells", Map.of("desk_low", "680", "desk_high", "820"));
        assess(visitor, desk, "Hobcarton Bells", "Sibley", SMALL, CHAIR);
        assess(visitor, desk, "Hobcarton Bells", "Tolliver", TALL, CHAIR);
        visitor.open(desk + "/people/cards");
        assertEquals(List.of("A", "B"), visitor.page().select(".desk-card__mark").eachText());
        assertFalse(visitor.page().outerHtml().contains("Sibley"));
        visitor.open(desk + "/people");
        String first = visitor.page().select("input[name=who]").first().val();
        visitor.openEncoded(desk + "/people/cards?picked=yes&who=" + first + "&mark-" + first + "=%3Cb%3EOwl&with=shared");
        assertEquals(List.of("<b>Owl"), visitor.page().select(".desk-card__mark").eachText());
        visitor.open(desk + "/people?picked=yes");
        assertTrue(visitor.page().text().contains("Nobody is counted in"));
    }

    @Test
    void whoMovedAwayOrWasNotMeasuredIsShownButNotCounted() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String desk = desk(visitor, "Fangs Brow Cider", Map.of("desk_low", "680", "desk_high", "820"));
        long id = assess(visitor, desk, "Fangs Brow Cider", "Sibley", SMALL, CHAIR);
        assess(visitor, desk, "Fangs Brow Cider", "Unmeasured", Map.of(), CHAIR);
        String site = visitor.open(desk).select("a[href~=^/sites/\\d+$]").attr("href");
        String room = visitor.open(site).select("a[href~=/rooms/\\d+$]").attr("href");
        String other = RegisterVisit.piece(visitor, room, "desk", Map.of("name", "Desk 2", "desk_low", "700", "desk_high", "700")).replaceAll("\\D", "");
        visitor.open("/cases/" + id + "/work-place/edit?again=true");
        visitor.submit("/cases/" + id + "/work-place/edit", Map.of("assessedOn", "11 Mar 2026", "desk", other, "do", "save"));
        assertEquals(200, visitor.status(), visitor.page().text());
        visitor.open(desk + "/people");
        String who = visitor.page().select("section:has(#s-who) table").text();
        assertTrue(who.contains("Assessed at another desk since"), who);
        assertTrue(who.contains("Not counted: Lower leg"), who);
        assertTrue(visitor.page().text().contains("Nobody is counted in"));
    }

    @Test
    void onlyCliniciansAndOnlyDesks() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String desk = desk(visitor, "Loweswater Felt", Map.of("desk_low", "680", "desk_high", "820"));
        Visitor assistant = accounts.visitor(Role.ASSISTANT);
        for (String path : List.of("/people", "/people/cards")) {
            assistant.open(desk + path);
            assertEquals(403, assistant.status());
            visitor.open("/furniture/99999999" + path);
            assertEquals(404, visitor.status());
        }
        assistant.open(desk);
        assertFalse(assistant.page().text().contains("What they can share"));
    }

    @Test
    void thePageTakesAsManyStatementsForManyAsForOne() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String desk = desk(visitor, "Buttermere Slate", Map.of("desk_low", "680", "desk_high", "820"));
        assess(visitor, desk, "Buttermere Slate", "Sibley", SMALL, CHAIR);
        visitor.open(desk + "/people");
        long one = statements.during(() -> visitor.open(desk + "/people"));
        assess(visitor, desk, "Buttermere Slate", "Tolliver", TALL, CHAIR);
        assess(visitor, desk, "Buttermere Slate", "Third", TALL, CHAIR);
        assertEquals(one, statements.during(() -> visitor.open(desk + "/people")));
    }

    private static String number(Element row, String label) {
        return plain(row.select("td[data-label='" + label + "']").text()).replace(" mm", "");
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    private static String desk(Visitor visitor, String employer, Map<String, String> sizes) {
        Map<String, String> values = new HashMap<>(sizes);
        values.put("name", "Desk 1");
        return RegisterVisit.piece(visitor, RegisterVisit.site(visitor, RegisterVisit.employer(visitor, employer), "Hall"), "desk", values);
    }

    private long assess(Visitor visitor, String desk, String employer, String family, Map<String, String> person, Map<String, String> chair) {
        long id = cases.open("Avis", family);
        RegisterVisit.employ(accounts.visitor(Role.LEAD), id, employer);
        Map<String, String> values = new HashMap<>(person);
        values.putAll(chair);
        values.putAll(Map.of("assessedOn", "4 Mar 2026", "desk", desk.replaceAll("\\D", ""), "do", "save"));
        String edit = "/cases/" + id + "/work-place/edit";
        visitor.open(edit + "?desk=" + desk.replaceAll("\\D", ""));
        visitor.submit(edit, values);
        assertEquals(200, visitor.status(), visitor.page().text());
        return id;
    }
}
