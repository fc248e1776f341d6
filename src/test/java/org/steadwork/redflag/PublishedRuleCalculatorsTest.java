package org.steadwork.redflag;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.steadwork.bench.BenchAnswer;
import org.steadwork.bench.BenchGroup;
import org.steadwork.bench.Calculators;
import org.steadwork.redflag.rules.PublishedRule;

@QuarkusTest
class PublishedRuleCalculatorsTest {

    @Inject
    Calculators calculators;

    @Test
    void everyPublishedRuleIsOnTheBench() {
        assertEquals(PublishedRule.ALL.size(), calculators.in(BenchGroup.RED_FLAGS).size());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "rules/canadian-c-spine.csv", numLinesToSkip = 2)
    void theNeckRuleAnswersAsItsCases(String applies, String age, String dangerous, String tingling, String lowRisk, String left, String right, String expected) {
        BenchAnswer answer = answer("canadian-c-spine", Map.of("ccr_applies", applies, "ccr_age_65", age, "ccr_dangerous", dangerous, "ccr_tingling", tingling,
                "ccr_low_risk", lowRisk, "ccr_rotation_left", left, "ccr_rotation_right", right));
        assertEquals(expected.toLowerCase(), answer.result().get("outcome"));
    }

    @Test
    void whatIsLeftOutIsNotANo() {
        BenchAnswer answer = answer("ottawa-knee", new HashMap<>());
        assertEquals("incomplete", answer.result().get("outcome"));
        assertEquals(true, answer.result().get("calls_for_action"));
    }

    private BenchAnswer answer(String rule, Map<String, Object> given) {
        return calculators.answer(calculators.named("red-flags/" + rule).orElseThrow(), given);
    }
}
