package org.steadwork.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;

/** Every vector of the methods' file through the API, entered in words as at the Bench; its rows name where each comes from. */
@QuarkusTest
class ApiVectorsTest {

    private static final double HALF_A_PERCENT = 0.005;
    private static final Map<String, String> BANDS = Map.of("in_range", "green", "near_the_edge", "amber", "out_of_range", "red");

    @Inject
    TestAccounts accounts;

    static List<Vector> vectors() throws Exception {
        return PublishedVectorsTest.vectors();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("vectors")
    void holds(Vector v) throws Exception {
        String body = new ObjectMapper().writeValueAsString(VectorBodies.of(v));
        Response answer = accounts.visitor(Role.CLINICIAN).json("/api/calculate/" + VectorBodies.calculator(v), body);
        if (v.id().equals("V7")) {
            // for the formulas only: its efforts do not fit into the minute, so it is refused as an entry
            assertEquals(422, answer.statusCode());
            assertEquals("seconds", answer.jsonPath().getString("errors[0].field"));
            return;
        }
        assertEquals(200, answer.statusCode(), body + " " + answer.asString());
        JsonPath result = answer.jsonPath().setRootPath("result");
        switch (VectorBodies.calculator(v)) {
            case "lifting-printed" -> {
                assertEquals(v.expects("RWL"), result.getDouble("limit_lb"), v.tolerance("RWL"));
                assertEquals(v.expects("LI"), result.getDouble("index"), v.tolerance("LI"));
            }
            case "lifting" -> {
                assertEquals(v.expects("RWL"), result.getDouble("limit_kg"), v.tolerance("RWL"));
                if (v.expected().get("LI").equals("undefined")) {
                    assertNull(result.get("index"));
                } else {
                    assertEquals(v.expects("LI"), result.getDouble("index"), v.tolerance("LI"));
                }
            }
            case "lifting-several", "lifting-known-limits" -> assertEquals(v.expects("CLI"), result.getDouble("index"), v.tolerance("CLI"));
            case "rula" -> same(v, result, Map.of("A", "score_a", "B", "score_b", "C", "score_c", "D", "score_d", "grand", "score"));
            case "reba" -> same(v, result, Map.of("scoreA", "score_a", "scoreB", "score_b", "C", "score_c", "REBA", "score"));
            case "rosa" -> same(v, result, Map.of("chair", "chair", "peripherals", "peripherals", "final", "score"));
            case "strain-index" -> assertEquals(v.expects("SI"), result.getDouble("index"), 1e-9);
            case "revised-strain-index" -> assertEquals(v.expects("RSI"), result.getDouble("index"), v.expects("RSI") * HALF_A_PERCENT);
            case "static-posture" -> posture(v, result);
            default -> day(v, result);
        }
    }

    private static void same(Vector v, JsonPath result, Map<String, String> names) {
        Map<String, Object> given = new TreeMap<>();
        names.forEach((expected, name) -> given.put(expected, (double) result.getInt(name)));
        assertEquals(names.keySet().stream().collect(Collectors.toMap(name -> name, v::expects, (a, b) -> a, TreeMap::new)), given);
    }

    private static void posture(Vector v, JsonPath result) {
        if (v.expected().containsKey("minutes")) {
            assertEquals(v.expects("minutes"), result.getDouble("minutes"), 1e-6);
        } else {
            assertTrue(v.expectsWord(result.getString("verdict")), result.getString("verdict") + " against " + v.expected());
        }
        if (v.expected().containsKey("neck")) {
            assertEquals(v.expects("neck"), result.getDouble("neck_degrees"));
            assertEquals("not_recommended", result.getString("parts.find { it.part == 'neck' }.verdict"));
        }
    }

    private static void day(Vector v, JsonPath result) {
        Map<String, String> expected = v.expected();
        if (expected.containsKey("F")) {
            assertEquals(v.expects("F"), result.getDouble("per_minute"), v.tolerance("F"));
        } else if (expected.containsKey("goals")) {
            assertEquals(expected.get("goals"), Math.round(result.getDouble("first_goal")) + "|" + Math.round(result.getDouble("later_goal")));
        } else if (expected.containsKey("goal")) {
            assertEquals(v.expects("goal"), result.getDouble("first_goal"));
            assertEquals(v.expects("short"), result.getDouble("short_of_first"));
        } else {
            assertEquals(expected.get("runs"), result.getList("runs").stream().map(String::valueOf).collect(Collectors.joining("|")));
            assertEquals(v.expects("total"), result.getDouble("total"));
            assertEquals(v.expects("longest"), result.getDouble("longest"));
            assertTrue(v.expectsWord(BANDS.get(result.getString("band").toLowerCase(Locale.ROOT))));
        }
    }
}
