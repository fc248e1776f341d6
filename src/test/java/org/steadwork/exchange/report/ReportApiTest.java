package org.steadwork.exchange.report;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.bench.Calculators;
import org.steadwork.casefile.CaseFile;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.Score;
import org.steadwork.outcome.Scores;
import org.steadwork.web.Dates;
import org.steadwork.web.Route;
import org.steadwork.web.Statements;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.TestCases;
import org.steadwork.web.Visitor;

/** The routes for other programs: who may read what with which token, and that every answer is as the OpenAPI document says. */
@QuarkusTest
class ReportApiTest {

    @Inject
    TestAccounts accounts;

    @Inject
    TestCases cases;

    @Inject
    ReportTokens tokens;

    @Inject
    ReportRows rows;

    @Inject
    Instruments instruments;

    @Inject
    Scores scores;

    @Inject
    Calculators calculators;

    @Inject
    Statements statements;

    @Inject
    EntityManager db;

    private final ObjectMapper json = new ObjectMapper();

    /** Makes a token on the page, as the lead does. */
    private String token(List<String> scopes) {
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/clinic/tokens");
        lead.submit("/clinic/tokens", Map.of("name", "Quality report", "expiresOn", Dates.shown(LocalDate.now().plusDays(30))), Map.of("scopes", scopes));
        assertEquals(200, lead.status(), lead.page().text());
        String token = lead.page().select("code.copyable").text();
        assertTrue(token.matches("swr_[A-Za-z0-9_-]{43}"), token);
        assertFalse(lead.open("/clinic/tokens").html().contains(token), "the token is shown a second time");
        return token;
    }

    private static Response get(String path, String token) {
        return given().redirects().follow(false).header("Authorization", "Bearer " + token).get(path);
    }

    @Test
    void theTokenItselfIsNowhereStored() {
        String token = token(List.of("figures:read"));
        List<?> stored = QuarkusTransaction.requiringNew().call(() -> db.createNativeQuery("select token_hash from report_token").getResultList());
        assertTrue(stored.contains(ReportTokens.fingerprint(token)));
        assertFalse(stored.contains(token));
    }

    @Test
    void eachScopeOpensItsOwnRouteAndNoOther() {
        String figures = token(List.of("figures:read"));
        String rowsOnly = token(List.of("cases:read-pseudonymous"));
        assertEquals(200, get("/api/report/figures", figures).statusCode());
        assertEquals(403, get("/api/report/cases", figures).statusCode());
        assertEquals(200, get("/api/report/cases", rowsOnly).statusCode());
        assertEquals(403, get("/api/report/figures", rowsOnly).statusCode());
        assertEquals(200, get("/api/report/cases", token(List.of("figures:read", "cases:read-pseudonymous"))).statusCode());
    }

    /** A token is for reporting alone: on a page, on the API of a clinician and on the document it lets nobody in. */
    @Test
    void aTokenOpensNothingElse() {
        String token = token(List.of("figures:read", "cases:read-pseudonymous"));
        long file = cases.open("Tilda", "Tokenless");
        for (String path : List.of("/", "/patients", "/cases/" + file, "/clinic", "/clinic/tokens", "/q/openapi")) {
            assertEquals(303, get(path, token).statusCode(), path);
        }
        assertEquals(401, get("/api/cases/" + file + "/fhir", token).statusCode());
        assertEquals(401, given().header("Authorization", "Bearer " + token).contentType("application/json").body("{}").post("/api/calculate/screen-breaks").statusCode());
    }

    @Test
    void withoutATokenThatHoldsNobodyComesIn() {
        for (String wrong : List.of("", "swr_", "swr_" + "a".repeat(43), "x' or '1'='1", "\u00e4")) {
            Response refused = get("/api/report/figures", wrong);
            assertEquals(401, refused.statusCode(), wrong);
            assertTrue(refused.contentType().startsWith("application/problem+json"), refused.contentType());
        }
        assertEquals(401, given().redirects().follow(false).get("/api/report/figures").statusCode());
        Visitor clinician = accounts.visitor(Role.LEAD);
        clinician.open("/api/report/cases");
        assertEquals(403, clinician.status(), "a session is no token");
    }

    @Test
    void aRevokedTokenAndOneThatRanOutEndAtOnce() {
        String token = token(List.of("figures:read"));
        assertEquals(200, get("/api/report/figures", token).statusCode());
        long id = QuarkusTransaction.requiringNew().call(() -> db.createQuery("select t.id from ReportToken t where t.tokenHash = ?1", Long.class)
                .setParameter(1, ReportTokens.fingerprint(token)).getSingleResult());
        Visitor lead = accounts.visitor(Role.LEAD);
        lead.open("/clinic/tokens");
        lead.submit("/clinic/tokens/" + id + "/revoke", Map.of());
        assertEquals(401, get("/api/report/figures", token).statusCode());
        String old = token(List.of("figures:read"));
        QuarkusTransaction.requiringNew().run(() -> db.createNativeQuery("update report_token set expires_on = date '2020-01-01' where token_hash = ?1")
                .setParameter(1, ReportTokens.fingerprint(old)).executeUpdate());
        assertEquals(401, get("/api/report/figures", old).statusCode());
    }

    @Test
    void wrongInputOnThePageIsAnsweredAtItsField() {
        Visitor lead = accounts.visitor(Role.LEAD);
        for (Map<String, String> wrong : List.of(Map.of("name", "", "expiresOn", "1 Jan 2000"), Map.of("name", "x".repeat(81), "expiresOn", "1 Jan 2999"))) {
            lead.open("/clinic/tokens");
            lead.submit("/clinic/tokens", wrong);
            assertEquals(422, lead.status());
            assertEquals(Set.of("name-error", "scopes-error", "expiresOn-error"), new TreeSet<>(lead.page().select("[id$=-error]").eachAttr("id")));
        }
    }

    @Test
    void nothingInARowNamesThePerson() {
        long file = cases.open("Wilhelmina", "Unnamed-Person");
        score(file);
        String token = token(List.of("cases:read-pseudonymous"));
        for (String format : List.of("json", "csv")) {
            String all = get("/api/report/cases?size=1000&format=" + format, token).asString();
            assertFalse(all.contains("Wilhelmina") || all.contains("Unnamed") || all.contains("1988-05-03") || all.contains("SW-"), format);
            assertTrue(all.contains("30 to 39"), format);
        }
    }

    private void score(long file) {
        QuarkusTransaction.requiringNew().run(() -> {
            Score score = new Score(db.find(CaseFile.class, file), instruments.find("ndi").orElseThrow(), TestCases.OPENED);
            score.record(instruments.find("ndi").orElseThrow(), List.of(2, 1, 3, 2, 2, 1, 2, 3, 2, 1), "T", Instant.EPOCH);
            scores.persist(score);
        });
    }

    @Test
    void pseudonymsStayTheSameForOneTokenAndDifferBetweenTokens() throws IOException {
        cases.open("Paula", "Pseudo");
        String one = token(List.of("cases:read-pseudonymous"));
        String two = token(List.of("cases:read-pseudonymous"));
        JsonNode first = json.readTree(get("/api/report/cases?size=1", one).asString()).at("/rows/0");
        assertEquals(first, json.readTree(get("/api/report/cases?size=1", one).asString()).at("/rows/0"));
        JsonNode other = json.readTree(get("/api/report/cases?size=1", two).asString()).at("/rows/0");
        assertNotEquals(first.get("case"), other.get("case"));
        assertNotEquals(first.get("patient"), other.get("patient"));
        assertEquals(first.get("opened_on"), other.get("opened_on"));
    }

    @Test
    void pagesBringEveryCaseOnce() throws IOException {
        for (int i = 0; i < 5; i++) {
            cases.open("Page", "Turner" + i);
        }
        String token = token(List.of("cases:read-pseudonymous"));
        long total = json.readTree(get("/api/report/cases?size=1", token).asString()).get("total").asLong();
        Set<String> seen = new TreeSet<>();
        long pages = (total + 999) / 1000;
        for (int page = 1; page <= pages; page++) {
            json.readTree(get("/api/report/cases?size=1000&page=" + page, token).asString()).get("rows").forEach(row -> assertTrue(seen.add(row.get("case").asText())));
        }
        assertEquals(total, seen.size());
        assertEquals(0, json.readTree(get("/api/report/cases?size=1000&page=" + (pages + 1), token).asString()).get("rows").size());
        for (String wrong : List.of("page=0", "page=-1", "size=1001", "size=x", "format=xml", "page=99999999999")) {
            Response refused = get("/api/report/cases?" + wrong, token);
            assertEquals(422, refused.statusCode(), wrong);
        }
    }

    @Test
    void aPageTakesAFixedNumberOfStatements() {
        for (int i = 0; i < 30; i++) {
            score(cases.open("State", "Ment" + i));
        }
        Pseudonyms pseudonyms = new Pseudonyms("00".repeat(32));
        long few = statements.during(() -> QuarkusTransaction.requiringNew().run(() -> rows.page(1, 3, pseudonyms)));
        long many = statements.during(() -> QuarkusTransaction.requiringNew().run(() -> rows.page(1, 30, pseudonyms)));
        assertEquals(few, many);
        assertEquals(4, many);
    }

    @Test
    void tooManyRequestsAreAskedToWait() {
        String token = token(List.of("figures:read"));
        Response answer = null;
        for (int i = 0; i <= RateBook.MOST_A_MINUTE; i++) {
            answer = get("/api/report/figures", token);
        }
        assertEquals(429, answer.statusCode());
        assertTrue(Integer.parseInt(answer.header("Retry-After")) > 0);
        valid("get", "/api/report/figures", answer);
    }

    /** Source of the check: JSON Schema 2020-12 as a general-purpose library reads it; OpenAPI 3.1 takes its schemas from there. */
    @Test
    void everyAnswerIsAsTheDocumentSays() throws IOException {
        long file = cases.open("Dora", "Documented");
        score(file);
        String both = token(List.of("figures:read", "cases:read-pseudonymous"));
        String figures = token(List.of("figures:read"));
        valid("get", "/api/report/cases", get("/api/report/cases", both));
        valid("get", "/api/report/cases", get("/api/report/cases?format=csv", both));
        valid("get", "/api/report/cases", get("/api/report/cases?page=x", both));
        valid("get", "/api/report/cases", get("/api/report/cases", "swr_wrong"));
        valid("get", "/api/report/cases", get("/api/report/cases", figures));
        valid("get", "/api/report/figures", get("/api/report/figures", both));
        valid("get", "/api/report/figures", get("/api/report/figures", "swr_wrong"));
        String fhir = "/api/cases/{id}/fhir";
        for (Role role : Role.values()) {
            valid("get", fhir, signedIn(role, "/api/cases/" + file + "/fhir"));
        }
        valid("get", fhir, signedIn(Role.CLINICIAN, "/api/cases/987654321/fhir"));
        valid("get", fhir, signedIn(Role.CLINICIAN, "/api/cases/" + file + "/fhir?for=employer-1"));
        valid("get", fhir, given().redirects().follow(false).get("/api/cases/" + file + "/fhir"));
        for (var calculator : calculators.all()) {
            String path = "/api/calculate/" + calculator.key();
            String example = json.writeValueAsString(calculator.example());
            Visitor clinician = accounts.visitor(Role.CLINICIAN);
            valid("post", path, clinician.json(path, example));
            for (String wrong : List.of("{", "[]", "{\"no_such_value\": 1}")) {
                valid("post", path, clinician.json(path, wrong));
            }
            valid("post", path, clinician.body(path, "text/plain", "x"));
        }
    }

    /** The check itself must be able to fail. */
    @Test
    void anAnswerThatIsNotAsSaidIsSeen() throws IOException {
        JsonNode document = document();
        ObjectNode schema = (ObjectNode) json.readTree("{\"$ref\": \"#/components/schemas/ReportPage\"}");
        schema.set("components", document.get("components"));
        String right = get("/api/report/cases?size=1", token(List.of("cases:read-pseudonymous"))).asString();
        var reader = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema, SchemaValidatorsConfig.builder().formatAssertionsEnabled(true).build());
        assertTrue(reader.validate(json.readTree(right)).isEmpty());
        for (String wrong : List.of(right.replaceFirst("\"opened_on\":\"[^\"]*\"", "\"opened_on\":\"yesterday\""), right.replace("\"total\":", "\"all\":"), right.replaceFirst("\"sex\":\"[a-z_]*\"",
                "\"sex\":\"x\""), right.replaceFirst("\"visits_attended\":\\d+", "\"visits_attended\":\"1\""))) {
            assertFalse(reader.validate(json.readTree(wrong)).isEmpty(), wrong);
        }
    }

    /** Every route under /api/ that the classes declare stands in the document. */
    @Test
    void noRouteIsLeftOutOfTheDocument() throws IOException {
        Set<String> paths = new TreeSet<>();
        document().get("paths").fieldNames().forEachRemaining(paths::add);
        Set<String> declared = Route.all().stream().map(Route::path).filter(path -> path.startsWith("/api/") && !path.startsWith("/api/calculate/")).collect(Collectors.toCollection(TreeSet::new));
        assertTrue(declared.containsAll(List.of("/api/cases/{id}/fhir", "/api/report/cases", "/api/report/figures")), declared.toString());
        assertTrue(paths.stream().noneMatch(path -> path.contains(": ") || !path.startsWith("/api/")), paths.toString());
        calculators.all().forEach(calculator -> declared.add("/api/calculate/" + calculator.key()));
        assertEquals(declared, paths);
    }

    private Response signedIn(Role role, String path) {
        Visitor visitor = accounts.visitor(role);
        visitor.open(path);
        return visitor.answer();
    }

    private JsonNode document() throws IOException {
        return json.readTree(signedIn(Role.LEAD, "/q/openapi?format=json").asString());
    }

    private JsonNode documentRead;

    private void valid(String method, String path, Response answer) {
        try {
            documentRead = documentRead == null ? document() : documentRead;
            JsonNode said = documentRead.at("/paths/" + path.replace("~", "~0").replace("/", "~1") + "/" + method + "/responses/" + answer.statusCode());
            assertFalse(said.isMissingNode(), method + " " + path + " answered " + answer.statusCode() + ", which the document does not say: " + answer.asString());
            String type = answer.contentType().replaceFirst(";.*", "");
            JsonNode content = said.at("/content/" + type.replace("/", "~1"));
            assertFalse(content.isMissingNode(), path + " answered " + type + ", but the document says " + said);
            if (type.endsWith("json")) {
                ObjectNode schema = content.get("schema").deepCopy();
                schema.set("components", documentRead.get("components"));
                Set<ValidationMessage> wrong = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(schema, SchemaValidatorsConfig.builder().formatAssertionsEnabled(true).build()).validate(json.readTree(answer.asString()));
                assertTrue(wrong.isEmpty(), () -> method + " " + path + " " + answer.statusCode() + ": " + wrong + "\n" + answer.asString());
            }
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
