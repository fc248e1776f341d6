package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** The sheet for the buyer and the card for the desk. */
@QuarkusTest
class RecommendationPagesTest {

    /** Worked case 7: the chair cannot go low enough, there is no footrest. Source: worked by hand, see the fit's worked cases. */
    private static final Map<String, String> CASE_7 = Map.ofEntries(Map.entry("assessedOn", "4 Mar 2026"), Map.entry("popliteal_height", "370"),
            Map.entry("shoe", "20"), Map.entry("elbow_rest_height", "225"), Map.entry("eye_height_sitting", "705"), Map.entry("thigh_clearance", "135"),
            Map.entry("buttock_popliteal_length", "450"), Map.entry("arm_reach", "640"), Map.entry("seat_now", "450"), Map.entry("seat_low", "450"),
            Map.entry("seat_high", "570"), Map.entry("seat_depth_now", "410"), Map.entry("seat_depth_low", "390"), Map.entry("seat_depth_high", "440"),
            Map.entry("footrest_now", "0"), Map.entry("desk_now", "700"), Map.entry("desk_low", "620"), Map.entry("desk_high", "900"),
            Map.entry("top_thickness", "30"), Map.entry("home_row", "30"), Map.entry("screen_top_now", "1135"), Map.entry("screen_low", "380"),
            Map.entry("screen_high", "600"), Map.entry("distance_now", "640"));

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    EquipmentContent equipment;

    private Visitor saved(long id, Map<String, String> more) {
        Map<String, String> fields = new HashMap<>(CASE_7);
        fields.putAll(more);
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        visitor.open("/cases/" + id + "/work-place/edit");
        visitor.submit("/cases/" + id + "/work-place/edit", fields);
        return visitor;
    }

    @Test
    void aBuyerReadsWhatWhichRangeHowManyAndWhy() {
        long id = cases.open("Wilhelmina", "Thistlewood");
        Visitor visitor = saved(id, Map.of());
        visitor.open("/cases/" + id + "/work-place/recommendation");
        assertEquals(200, visitor.status());
        // by hand: seat 450 less lower leg and shoe 390 = 60; 20 mm and the tape's 5 mm to either side, outwards to 10 mm
        List<String> row = visitor.page().select(".order__list tbody tr").get(0).children().eachText();
        assertEquals(List.of("1", "Footrest needed", "Top adjustable from 30 to 90 mm above the floor at least, in steps of 10 mm or less; "
                + "top surface 450 mm wide and 350 mm deep or more, slope 5 to 15°; does not slide.", "1",
                "The seat has to stand at 450 mm for the desk, and the feet would hang.", "Evidence E1; measured"), row);
        assertEquals(1, visitor.page().select(".order__list tbody tr").size());
        assertEquals("60 mm", setting(visitor, "Footrest"));
        assertEquals("645 mm", setting(visitor, "Desk top"));
        assertEquals(2, visitor.page().select(".order__drawing svg").size());
    }

    private static String setting(Visitor visitor, String part) {
        return visitor.page().select("dl dt").stream().filter(dt -> dt.text().equals(part)).findFirst().orElseThrow().nextElementSibling().text()
                .replace('\u00a0', ' ');
    }

    @Test
    void whatWasSeenToBeMissingIsAskedForAndJoinsTheSameThing() {
        long id = cases.open("Wilhelmina", "Thistlewood");
        Visitor visitor = saved(id, Map.of("DC-1", "does_not_fit", "FT-2", "partly"));
        visitor.open("/cases/" + id + "/work-place/recommendation");
        assertEquals(List.of("Footrest needed", "Document holder needed"), visitor.page().select(".order__list tbody th").eachText());
        assertTrue(visitor.page().select(".order__list tbody tr").get(0).text().contains("slides"), "the second reason stands with the first");
    }

    @Test
    void anEstimatedSizeWidensTheRangeAndIsSaid() {
        long id = cases.open("Wilhelmina", "Thistlewood");
        Visitor visitor = saved(id, Map.of("popliteal_height", "", "popliteal_height_estimate", "yes", "stature", "1560"));
        visitor.open("/cases/" + id + "/work-place/recommendation");
        assertEquals(200, visitor.status());
        String text = visitor.page().text();
        assertTrue(text.contains("Estimated, not measured: Lower leg, floor to knee crease, give or take"), text);
        assertTrue(text.contains("estimated size, widened for its error"), text);
    }

    @Test
    void sheetAndCardNameNobodyAndNothingOfTheirHealth() {
        long id = cases.open("Wilhelmina", "Thistlewood");
        Visitor visitor = saved(id, Map.of());
        for (String page : List.of("recommendation", "card", "card?mark=owl&with=bought")) {
            visitor.open("/cases/" + id + "/work-place/" + page);
            assertEquals(200, visitor.status(), page);
            String html = visitor.page().outerHtml();
            for (String word : List.of("Wilhelmina", "Thistlewood", "neck", "shoulder", "low back", "symptom", "diagnos", "1980", "complaint of")) {
                assertFalse(html.toLowerCase().contains(word.toLowerCase()), page + " says " + word);
            }
        }
    }

    @Test
    void aCardShowsTheChosenMarkAndEitherSettings() {
        long id = cases.open("Wilhelmina", "Thistlewood");
        Visitor visitor = saved(id, Map.of());
        visitor.open("/cases/" + id + "/work-place/card?mark=<b>owl&with=bought");
        assertEquals("<b>owl", visitor.page().select(".desk-card__mark").text());
        assertEquals("60 mm", setting(visitor, "Footrest"));
        visitor.open("/cases/" + id + "/work-place/card?mark=a mark longer than twelve");
        assertEquals("a mark longe", visitor.page().select(".desk-card__mark").text());
        assertEquals("none", setting(visitor, "Footrest"), "with what is there: no footrest");
    }

    @Test
    void withoutAnAssessmentThereIsNoSheet() {
        long id = cases.open("Wilhelmina", "Thistlewood");
        Visitor visitor = accounts.visitor(Role.CLINICIAN);
        for (String page : List.of("recommendation", "card")) {
            visitor.open("/cases/" + id + "/work-place/" + page);
            assertEquals(404, visitor.status());
        }
    }

    @Test
    void everyPieceHasWordsAndASource() {
        for (org.steadwork.workplace.fit.Equipment piece : org.steadwork.workplace.fit.Equipment.values()) {
            assertFalse(equipment.of(piece).source().isBlank(), piece.name());
        }
        assertTrue(equipment.seen().size() >= 10);
    }
}
