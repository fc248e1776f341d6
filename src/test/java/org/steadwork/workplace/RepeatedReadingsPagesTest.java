package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** How a value was obtained goes through the form and back: read three times, told, measured after all. */
@QuarkusTest
class RepeatedReadingsPagesTest {

    private static final Map<String, String> PLACE = Map.of("assessedOn", "4 Mar 2026", "seat_low", "400", "seat_high", "530", "desk_low", "740", "desk_high", "740",
            "popliteal_height", "370", "do", "save");

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    EntityManager db;

    /**
     * Source: median of 232, 240, 244 is 240; range 12 ÷ d2(3) 1.693 = 7.09, times 0.6698 for the median of three = 4.747, times 1.96 = 9.3.
     * By hand from Shewhart's constants.
     */
    @Test
    void threeReadingsGiveTheirMedianAndTheirSpread() {
        long id = cases.open("Bethia", "Gilderdale");
        Visitor visitor = save(id, Map.of("elbow_rest_height", "232; 244;240"));
        assertEquals(200, visitor.status(), visitor.page().text());
        String row = plain(visitor.page().select("tr:has(th:contains(Elbow)):has(td[data-label=How])").text());
        assertTrue(row.contains("240 mm 9 mm measured 3 times, 4 Mar 2026"), row);
        assertTrue(row.contains("232; 244; 240 mm") && row.contains("12 mm apart"), row);
        assertEquals("240.000 MEASURED 4.7475 232;244;240", stored(id, "elbow_rest_height"));
        visitor.open(edit(id));
        assertEquals("232; 244; 240", visitor.page().select("#elbow_rest_height").val());
        visitor.submit(edit(id), Map.of("elbow_rest_height", "240"));
        assertEquals(200, visitor.status());
        assertFalse(visitor.page().text().contains("measured 3 times"));
        assertTrue(stored(id, "elbow_rest_height").endsWith("null"), stored(id, "elbow_rest_height"));
    }

    @Test
    void oneWrongReadingOrAFourthIsRefused() {
        long id = cases.open("Crispin", "Gilderdale");
        Visitor visitor = save(id, Map.of("elbow_rest_height", "232; 9; 240"));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#elbow_rest_height-error").text().contains("You entered “9”"), visitor.page().select("#elbow_rest_height-error").text());
        assertEquals("232; 9; 240", visitor.page().select("#elbow_rest_height").val());
        visitor.submit(edit(id), Map.of("elbow_rest_height", "1;2;3;4"));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#elbow_rest_height-error").text().contains("at most three times"));
    }

    @Test
    void twoReadingsThatAgreeInBeingUnlikelyAreTheSecondMeasurement() {
        long id = cases.open("Dorcas", "Gilderdale");
        Visitor visitor = save(id, Map.of("stature", "1550; 1552", "popliteal_height", "480", "elbow_rest_height", "240"));
        assertEquals(422, visitor.status());
        assertTrue(visitor.page().select("#popliteal_height-error").text().startsWith("Unlikely"));
        visitor.submit(edit(id), Map.of("popliteal_height", "480; 482"));
        assertEquals(200, visitor.status(), visitor.page().text());
    }

    @Test
    void whatTheRegisterOnlyWasToldStaysToldUntilItIsMeasured() {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        String room = RegisterVisit.site(visitor, RegisterVisit.employer(visitor, "Skelgill Looms"), "Weaving");
        String desk = RegisterVisit.piece(visitor, room, "desk", Map.of("name", "Desk 3", "desk_low", "735", "desk_high", "735", "top_thickness", "28", "how", "told",
                "knownOn", "3 Feb 2026"));
        long id = cases.open("Ellenor", "Skelgill");
        RegisterVisit.employ(accounts.visitor(Role.LEAD), id, "Skelgill Looms");
        visitor.open(edit(id) + "?desk=" + desk.replaceAll("\\D", ""));
        assertEquals("735", visitor.page().select("#desk_low").val());
        visitor.submit(edit(id), Map.of("assessedOn", "4 Mar 2026", "elbow_rest_height", "240", "popliteal_height", "370", "seat_low", "400", "seat_high", "530", "top_thickness", "30", "do", "save"));
        assertEquals(200, visitor.status(), visitor.page().text());
        assertTrue(stored(id, "desk_low").contains("TOLD") && stored(id, "desk_now").contains("TOLD"), stored(id, "desk_low"));
        assertTrue(stored(id, "top_thickness").contains("MEASURED"), "typed anew, so measured");
        assertTrue(visitor.page().text().contains("3 only told, not measured by us"), visitor.page().select("main").text());
        visitor.open(edit(id));
        visitor.submit(edit(id), Map.of("notes", "Seen again"));
        assertTrue(stored(id, "desk_low").contains("TOLD"), "saving again measures nothing");
        visitor.open(edit(id));
        visitor.submit(edit(id), Map.of("toldMeasured", "yes"));
        assertEquals(200, visitor.status());
        assertTrue(stored(id, "desk_low").contains("MEASURED"), stored(id, "desk_low"));
        assertFalse(visitor.page().text().contains("only told"));
    }

    private String stored(long id, String measure) {
        Object[] row = db.createQuery("select m.amount, m.how, m.standardError, m.readings from RecordedMeasurement m where m.assessment.caseFile.id = ?1 and m.measure = ?2",
                Object[].class).setParameter(1, id).setParameter(2, measure).getSingleResult();
        return row[0] + " " + row[1] + " " + row[2] + " " + row[3];
    }

    private Visitor save(long id, Map<String, String> values) {
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        Map<String, String> all = new HashMap<>(PLACE);
        all.putAll(values);
        visitor.open(edit(id));
        visitor.submit(edit(id), all);
        return visitor;
    }

    private static String edit(long id) {
        return "/cases/" + id + "/work-place/edit";
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u202f', ' ');
    }
}
