package org.steadwork.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Role;
import org.steadwork.web.Form;
import org.steadwork.web.TestAccounts;
import org.steadwork.web.Visitor;

/** What holds for every calculator of the Bench, whatever it computes: page and API agree, ranges hold, nothing breaks. */
@QuarkusTest
@Tag("longer")
class BenchTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    /** The usual run gives each input every third of the values, in turn; {@code -Dsteadwork.everything=true} all of them. */
    private static final int PARTS = 3;
    private static final boolean EVERYTHING = Boolean.getBoolean("steadwork.everything");
    private static final List<Object> HOSTILE = List.of("", " ", "NaN", "Infinity", "1e999", "x".repeat(5000), "<script>hostile(1)</script>", -1, 1e308,
            new BigDecimal("1e999999"), new BigDecimal("1e-999999"), true, List.of(), List.of(List.of()), Map.of(), Map.of("a", 1), "\u0000", "99:99", "2030-02-31");

    @Inject
    TestAccounts accounts;

    @Inject
    Calculators calculators;

    private Visitor clinician;
    private final List<String> wrong = new ArrayList<>();

    @BeforeEach
    void signIn() {
        clinician = accounts.visitor(Role.CLINICIAN);
    }

    @Test
    void theListNamesEveryCalculator() {
        Document page = clinician.open("/bench");
        assertFalse(calculators.all().isEmpty());
        assertEquals(calculators.all().stream().map(Calculator::key).map(key -> "/bench/" + key).sorted().toList(),
                page.select("main .bench-list a").eachAttr("href").stream().sorted().toList());
    }

    @Test
    void pageAndApiGiveTheExampleTheSameResult() throws JsonProcessingException {
        for (Calculator calculator : calculators.all()) {
            Response api = send(calculator, calculator.example());
            check(calculator, "example", api.statusCode() == 200, api.asString());
            if (api.statusCode() != 200) {
                continue;
            }
            JsonNode answer = JSON.readTree(api.asString());
            clinician.open("/bench/" + calculator.key() + "?example=yes");
            String limits = clinician.page().text();
            calculator.limits().forEach(limit -> check(calculator, "limit before the result", limits.contains(limit), limit));
            Document page = clinician.submit("/bench/" + calculator.key(), Map.of("do", "calculate"));
            check(calculator, "page", clinician.status() == 200 && !page.select("#result").isEmpty(), clinician.status() + " " + page.select(".notice").text());
            String shown = page.select("#result").text();
            check(calculator, "band", shown.contains(plain(answer.get("band").asText())), shown);
            for (JsonNode headline : answer.get("headlines")) {
                check(calculator, "headline", shown.contains(plain(headline.get("label").asText() + " " + headline.get("value").asText() + " "
                        + headline.get("unit").asText())), headline + " in " + shown);
            }
            check(calculator, "answers something", answer.get("result").size() > 0 && !answer.get("band").asText().isBlank(), api.asString());
            check(calculator, "limits stand before the result", page.text().indexOf(calculator.limits().get(0)) < page.text().indexOf(shown), "");
            check(calculator, "inputs kept", FormTree.write(calculator.inputs(), calculator.example()).fields().stream()
                    .allMatch(field -> !page.getElementsByAttributeValue("name", field).isEmpty()), "");
        }
        report();
    }

    @Test
    void aNumberJustOutsideItsRangeIsRefusedAtItsField() throws JsonProcessingException {
        int tried = 0;
        for (Calculator calculator : calculators.all()) {
            List<Spot> numbers = Spot.numbers(calculator);
            if (!numbers.isEmpty()) {
                onThePage(calculator, numbers.get(numbers.size() - 1));
            }
            for (Spot spot : numbers) {
                for (BigDecimal outside : List.of(spot.least().subtract(spot.step()), spot.most().add(spot.step()))) {
                    Response answer = send(calculator, spot.with(outside));
                    boolean at = answer.statusCode() == 422 && fields(answer).contains(spot.path());
                    check(calculator, spot.path() + " = " + outside, at && answer.contentType().startsWith("application/problem+json"), answer.asString());
                    tried++;
                }
            }
        }
        assertTrue(tried > 0 || calculators.all().stream().noneMatch(one -> !Spot.numbers(one).isEmpty()));
        report();
    }

    @Test
    void nothingHostileBreaksACalculator() throws JsonProcessingException {
        int turn = 0;
        for (Calculator calculator : calculators.all()) {
            for (Spot spot : Spot.oneOfEach(calculator)) {
                turn++;
                for (int i = EVERYTHING ? 0 : turn % PARTS; i < HOSTILE.size(); i += EVERYTHING ? 1 : PARTS) {
                    Object value = HOSTILE.get(i);
                    Response answer = send(calculator, spot.with(value));
                    boolean right = answer.statusCode() == 200 || answer.statusCode() == 422 && answer.contentType().startsWith("application/problem+json");
                    check(calculator, spot.path() + " = " + value, right, answer.statusCode() + " " + answer.asString());
                }
            }
            Map<String, Object> more = new LinkedHashMap<>(calculator.example());
            more.put("no_such_field", 1);
            Response answer = send(calculator, more);
            check(calculator, "an unknown field", answer.statusCode() == 422 && fields(answer).contains("no_such_field"), answer.asString());
        }
        report();
    }

    /** The page asks the same check as the API; one field a calculator shows that it says so at the field. */
    private void onThePage(Calculator calculator, Spot spot) {
        Form form = FormTree.write(calculator.inputs(), spot.with(spot.most().add(spot.step())));
        clinician.open("/bench/" + calculator.key());
        Map<String, List<String>> values = new LinkedHashMap<>();
        form.fields().forEach(field -> values.put(field, form.values(field)));
        values.put("csrf-token", List.of(clinician.page().select("input[name=csrf-token]").val()));
        clinician.post("/bench/" + calculator.key(), values);
        check(calculator, spot.path() + " on the page", clinician.status() == 422 && clinician.page().getElementById(spot.path() + "-error") != null,
                clinician.status() + " " + clinician.page().select(".notice").text());
    }

    /** Spaces as a page's text has them. */
    private static String plain(String text) {
        return text.replace('\u00a0', ' ').strip();
    }

    private Response send(Calculator calculator, Map<String, Object> values) throws JsonProcessingException {
        return clinician.json("/api/calculate/" + calculator.key(), JSON.writeValueAsString(values));
    }

    private static List<String> fields(Response answer) {
        return answer.jsonPath().getList("errors.field", String.class);
    }

    private void check(Calculator calculator, String what, boolean right, String instead) {
        if (!right) {
            wrong.add(calculator.key() + ", " + what + ": " + instead.substring(0, Math.min(400, instead.length())));
        }
    }

    private void report() {
        assertTrue(wrong.isEmpty(), () -> wrong.size() + " wrong:\n" + String.join("\n", wrong));
    }
}
