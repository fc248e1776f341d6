package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** The calculators of the work place through the API. Source: worked cases 2 and 8 by hand; estimates from the worked examples. */
@QuarkusTest
class FitCalculatorsTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Map<String, Object> CASE_2 = Map.of("popliteal_height", 355, "shoe", 20, "elbow_rest_height", 200, "eye_height_sitting", 690,
            "thigh_clearance", 125, "seat_low", 400, "seat_high", 510, "footrest_low", 50, "footrest_high", 250, "desk_now", 740);

    @Inject
    TestAccounts accounts;

    private Visitor clinician;

    @BeforeEach
    void signIn() {
        clinician = accounts.visitor(Role.CLINICIAN);
    }

    private JsonNode answer(String calculator, Map<String, Object> body) throws Exception {
        Response answer = clinician.json("/api/calculate/" + calculator, JSON.writeValueAsString(body));
        assertEquals(200, answer.statusCode(), answer.asString());
        return JSON.readTree(answer.asString());
    }

    private void refused(String calculator, Map<String, Object> body, String... fields) throws Exception {
        Response answer = clinician.json("/api/calculate/" + calculator, JSON.writeValueAsString(body));
        assertEquals(422, answer.statusCode(), answer.asString());
        JsonNode errors = JSON.readTree(answer.asString()).get("errors");
        for (String field : fields) {
            boolean named = false;
            for (JsonNode error : errors) {
                named |= error.get("field").asText().equals(field) && !error.get("reason").asText().isBlank();
            }
            assertTrue(named, field + " in " + errors);
        }
    }

    private static Map<String, Object> with(Map<String, Object> body, String name, Object value) {
        Map<String, Object> changed = new LinkedHashMap<>(body);
        changed.put(name, value);
        return changed;
    }

    @Test
    void aFitIsWorkedOutAndSaysWhatWouldHelp() throws Exception {
        JsonNode answer = answer("fit", CASE_2);
        JsonNode result = answer.get("result");
        assertEquals(510, result.at("/settings/seat/value").asDouble());
        assertEquals(135, result.at("/settings/footrest/value").asDouble());
        assertEquals(60, result.at("/deviations/elbow/value").asDouble());
        assertEquals("out_of_range", result.at("/deviations/elbow/verdict").asText());
        assertEquals(25, result.get("cost").asDouble(), 1e-9);
        boolean tray = false;
        for (JsonNode piece : result.get("equipment")) {
            tray |= piece.at("/items/0/piece").asText().equals("keyboard_tray") && piece.at("/items/0/size").asDouble() == 60;
        }
        assertTrue(tray, result.toString());
        assertTrue(answer.get("working").size() >= 5 && answer.get("limits").size() >= 3, answer.toString());
    }

    @Test
    void whatIsEstimatedCarriesItsIntervalAndWhatToMeasureNext() throws Exception {
        JsonNode result = answer("fit", Map.of("sex", "male", "stature", 1760, "thigh_clearance", 160, "seat_low", 380, "seat_high", 560, "desk_low", 600,
                "desk_high", 850)).get("result");
        // popliteal 431.0 ± 26.1 and 25 of shoe; drawn a thousand times
        assertEquals(456, result.at("/settings/seat/value").asDouble(), 1);
        assertEquals(456 - 26.1, result.at("/settings/seat/low").asDouble(), 5);
        assertEquals(456 + 26.1, result.at("/settings/seat/high").asDouble(), 5);
        assertEquals("elbow_rest_height", result.get("measure_next").asText());
    }

    @Test
    void aFitThatCannotBeWorkedOutSaysAtWhichField() throws Exception {
        refused("fit", Map.of("desk_now", 740, "seat_now", 450), "popliteal_height");
        refused("fit", Map.of("popliteal_height", 400, "elbow_rest_height", 240, "seat_now", 450), "desk_now");
        refused("fit", with(CASE_2, "seat_high", 390), "seat_high");
        refused("fit", with(Map.of("popliteal_height", 400, "elbow_rest_height", 240, "desk_now", 740), "seat_low", 400), "seat_high");
        refused("fit", with(CASE_2, "thigh_clearance", 5000), "thigh_clearance");
        refused("fit", with(CASE_2, "elbow", 5), "elbow");
        refused("fit", with(with(CASE_2, "sex", "female"), "stature", 2000).entrySet().stream().filter(e -> !e.getKey().equals("elbow_rest_height"))
                .collect(LinkedHashMap::new, (map, e) -> map.put(e.getKey(), e.getValue()), Map::putAll), "stature");
        refused("fit", with(with(CASE_2, "lenses", "none"), "desk_now", "high"), "lenses", "desk_now");
    }

    @Test
    void estimatesAreThoseOfTheWorkedExample() throws Exception {
        JsonNode estimates = answer("body-estimates", Map.of("sex", "male", "stature", 1760)).at("/result/estimates");
        for (JsonNode estimate : estimates) {
            if (estimate.get("dimension").asText().equals("popliteal_height")) {
                assertEquals(431.0, estimate.get("value").asDouble(), 0.05);
                assertEquals(26.1, estimate.get("give_or_take").asDouble(), 0.05);
            }
        }
        assertEquals(16, estimates.size());
        refused("body-estimates", Map.of("sex", "male", "stature", 1490), "stature");
        refused("body-estimates", Map.of("sex", "female", "stature", 1830), "stature");
        refused("body-estimates", Map.of("sex", "female", "stature", 1630, "body_mass", 150), "body_mass");
        refused("body-estimates", Map.of("sex", "other"), "sex", "stature");
    }

    @Test
    void aSharedDeskIsSetForEachAndForAll() throws Exception {
        Map<String, Object> desk = Map.of("people", List.of(
                Map.of("popliteal_height", 370, "shoe", 20, "elbow_rest_height", 230, "eye_height_sitting", 710, "thigh_clearance", 135),
                Map.of("popliteal_height", 470, "shoe", 25, "elbow_rest_height", 265, "eye_height_sitting", 830, "thigh_clearance", 170)), "seat_low", 400,
                "seat_high", 520, "desk_low", 680, "desk_high", 820);
        JsonNode result = answer("shared-desk", desk).get("result");
        assertEquals(680, result.at("/own/0/desk").asDouble());
        assertEquals(90, result.at("/own/0/footrest").asDouble());
        assertEquals(730, result.at("/own/1/desk").asDouble());
        assertEquals(725, result.at("/shared_height/height").asDouble());
        assertEquals(0, result.at("/shared_height/left_out").asInt());
        refused("shared-desk", with(desk, "people", List.of(Map.of("popliteal_height", 370, "elbow_rest_height", 9))), "people[0].elbow_rest_height");
        refused("shared-desk", with(desk, "people", List.of()), "people");
        refused("shared-desk", with(desk, "desk_high", 670), "desk_high");
    }

    @Test
    void whomFurnitureServesIsSaidWithItsError() throws Exception {
        Map<String, Object> furniture = Map.of("population", "us_army_2012", "women", 100, "seat_low", 380, "seat_high", 560, "desk_low", 600, "desk_high", 850);
        JsonNode result = answer("accommodation", furniture).get("result");
        assertEquals(20_000, result.get("people").asInt());
        double served = result.get("served").asDouble();
        double sum = served;
        for (JsonNode share : result.get("first_failing")) {
            sum += share.asDouble();
        }
        assertEquals(1, sum, 1e-9);
        assertEquals(Math.sqrt(served * (1 - served) / 20_000), result.get("standard_error").asDouble(), 1e-12);
        assertTrue(answer("accommodation", with(furniture, "accepted", "near_the_edge")).at("/result/served").asDouble() > served);
        refused("accommodation", with(furniture, "population", "elves"), "population");
        refused("accommodation", with(with(furniture, "women", 101), "people", 10), "women", "people");
    }
}
