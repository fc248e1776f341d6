package org.steadwork.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** The API's own rules: who may ask, what it answers when asked wrongly, and a document that says what it does. */
@QuarkusTest
class CalculateApiTest {

    private static final String PATH = "/api/calculate/screen-breaks";
    private static final String GOOD = "{\"start\":\"09:00\",\"end\":\"12:00\",\"breaks\":[{\"from\":\"10:00\",\"to\":\"10:10\"}]}";

    @Inject
    TestAccounts accounts;

    @Inject
    Calculators calculators;

    @Test
    void whoIsNotSignedInOrNoClinicianIsRefusedAsAProblem() {
        problem(new Visitor().json(PATH, GOOD), 401);
        problem(accounts.visitor(Role.ASSISTANT).json(PATH, GOOD), 403);
        assertEquals(200, accounts.visitor(Role.CLINICIAN).json(PATH, GOOD).statusCode());
        assertEquals(110, accounts.visitor(Role.LEAD).json(PATH, GOOD).jsonPath().getInt("result.longest"));
    }

    @Test
    void whatIsNotOneJsonObjectIsRefusedAsAProblem() {
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        for (String body : List.of("", "{", "{\"start\":NaN}", "{\"start\":1,\"start\":2}", "[]", "1", "null", GOOD + GOOD, "{\"a\":1e99999999999999}",
                "{\"a\":" + "[".repeat(3000), "\u0000", "start=09:00")) {
            problem(clinician.json(PATH, body), 400);
        }
        problem(clinician.json(PATH, "{\"a\":\"" + "x".repeat(CalculateApi.LARGEST_BODY) + "\"}"), 413);
        problem(clinician.json("/api/calculate/no-such/thing", GOOD), 404);
        problem(clinician.json("/api/nothing", GOOD), 404);
    }

    /** A form of another site can send these three kinds and no other; none of them gets in without a token. */
    @Test
    void aFormOfAnotherSiteCannotSendHere() {
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        problem(clinician.body(PATH, "text/plain", GOOD), 415);
        clinician.post(PATH, Map.of("start", List.of("09:00")));
        problem(clinician.answer(), 406); // a form asks for a page, and none is to be had here
        problem(clinician.body(PATH, "multipart/form-data; boundary=x", "--x--"), 400);
    }

    /** The exemption is for the API alone. */
    @Test
    void elsewhereABodyThatIsNoFormStillNeedsTheToken() {
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        for (String type : List.of("text/plain", "application/json", "application/octet-stream")) {
            assertEquals(400, clinician.body("/patients/new", type, GOOD).statusCode(), type);
            assertEquals(400, clinician.body("/sign-out", type, GOOD).statusCode(), type);
        }
        assertEquals(200, clinician.open("/bench").select("h1").size() == 1 ? clinician.status() : -1, "still signed in");
    }

    @Test
    void theDocumentIsForStaffAndListsEveryCalculatorWithAnExampleThatWorks() throws Exception {
        assertEquals(303, RestAssured.given().redirects().follow(false).get("/q/openapi?format=json").statusCode());
        Visitor clinician = accounts.visitor(Role.CLINICIAN);
        clinician.open("/q/openapi?format=json");
        ObjectMapper json = new ObjectMapper();
        JsonNode paths = json.readTree(clinician.answer().asString()).get("paths");
        TreeSet<String> listed = new TreeSet<>();
        paths.fieldNames().forEachRemaining(listed::add);
        calculators.all().forEach(calculator -> assertTrue(listed.contains("/api/calculate/" + calculator.key()), listed.toString()));
        assertTrue(listed.stream().allMatch(path -> path.startsWith("/api/")), listed.toString());
        for (Calculator calculator : calculators.all()) {
            JsonNode media = paths.at("/" + ("/api/calculate/" + calculator.key()).replace("~", "~0").replace("/", "~1")).at("/post/requestBody/content").get("application/json");
            assertEquals(calculator.inputs().stream().map(Input::name).toList(), List.copyOf(json.convertValue(media.get("schema").get("properties"), Map.class).keySet()));
            Response answer = clinician.json("/api/calculate/" + calculator.key(), media.get("example").toString());
            assertEquals(200, answer.statusCode(), calculator.key() + " " + answer.asString());
        }
    }

    @Test
    void theDocumentStatesUnitsAndRanges() {
        var schema = CalculatorSchema.of(List.of(Input.number("reach", "Reach", "cm", 0, 100, 1).hint("From the ankles."),
                Input.choice("grip", "Grip", List.of(new Choice("good", "Good"), new Choice("poor", "Poor"))), Input.answer("pain", "Pain"),
                Input.items("items", "Items", List.of(new Item("Reading", 0, 5)))));
        assertEquals("100", schema.getProperties().get("reach").getMaximum().toString());
        assertEquals("cm", schema.getProperties().get("reach").getExtensions().get("x-unit"));
        assertEquals(List.of("good", "poor"), schema.getProperties().get("grip").getEnumeration());
        assertEquals(List.of("reach", "grip"), schema.getRequired());
        assertTrue(schema.getProperties().get("reach").getDescription().startsWith("From the ankles."));
        assertFalse(schema.getAdditionalPropertiesBoolean());
    }

    private static void problem(Response answer, int status) {
        assertEquals(status, answer.statusCode(), answer.asString());
        assertTrue(answer.contentType().startsWith("application/problem+json"), answer.contentType() + " " + answer.asString());
        assertEquals(status, answer.jsonPath().getInt("status"));
        assertFalse(answer.jsonPath().getString("title").isBlank());
    }
}
