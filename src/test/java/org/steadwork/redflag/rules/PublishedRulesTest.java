package org.steadwork.redflag.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.steadwork.kernel.Answer;

class PublishedRulesTest {

    @ParameterizedTest
    @CsvFileSource(resources = "canadian-c-spine.csv", numLinesToSkip = 2)
    void canadianCSpine(String applies, String age, String dangerous, String tingling, String lowRisk, String left, String right,
                        Outcome expected) {
        assertEquals(expected, outcome(new CanadianCSpineRule(), applies, age, dangerous, tingling, lowRisk, left, right).outcome());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "ottawa-ankle-foot.csv", numLinesToSkip = 2)
    void ottawaAnkleAndFoot(String rule, String zone, String one, String two, String noSteps, Outcome expected) {
        PublishedRule tried = rule.equals("ankle") ? OttawaAnkleFootRule.ankle() : OttawaAnkleFootRule.foot();
        assertEquals(expected, outcome(tried, zone, one, two, noSteps).outcome());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "ottawa-knee.csv", numLinesToSkip = 2)
    void ottawaKnee(String age, String patella, String fibula, String noBend, String noSteps, Outcome expected) {
        assertEquals(expected, outcome(new OttawaKneeRule(), age, patella, fibula, noBend, noSteps).outcome());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "leg-clot.csv", numLinesToSkip = 2)
    void legClot(String yes, String unknown, String otherCause, int low, int high, Outcome expected) {
        LegClotScore rule = new LegClotScore();
        Map<String, Answer> answers = new HashMap<>();
        rule.items().forEach(item -> answers.put(item, Answer.NO));
        List.of(yes.split(";")).forEach(item -> answers.put(known(rule, item), Answer.YES));
        if (unknown != null) {
            answers.put(known(rule, unknown), Answer.UNKNOWN);
        }
        answers.put("wells_other_cause", answer(otherCause));
        assertEquals(RuleResult.of(expected, new Range(low, high)), rule.evaluate(ScreenAnswers.of(answers)));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "inflammatory-back-pain.csv", numLinesToSkip = 2)
    void inflammatoryBackPain(String under40, String gradual, String exercise, String rest, String night, int low, int high,
                              Outcome expected) {
        assertEquals(RuleResult.of(expected, new Range(low, high)),
                outcome(new InflammatoryBackPainCriteria(), "yes", under40, gradual, exercise, rest, night));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "spondyloarthritis-referral.csv", numLinesToSkip = 2)
    void spondyloarthritisReferral(String gate, int yes, int unknown, Outcome expected) {
        SpondyloarthritisReferral rule = new SpondyloarthritisReferral();
        Map<String, Answer> answers = new HashMap<>();
        List<String> items = rule.items();
        for (int i = 0; i < items.size(); i++) {
            answers.put(items.get(i), i < 2 ? answer(gate) : i - 2 < yes ? Answer.YES : i - 2 < yes + unknown ? Answer.UNKNOWN : Answer.NO);
        }
        assertEquals(expected, rule.evaluate(ScreenAnswers.of(answers)).outcome());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "myelopathy-cluster.csv", numLinesToSkip = 2)
    void myelopathyCluster(String gait, String hoffmann, String supinator, String babinski, String over45, int low, int high,
                           Outcome expected) {
        assertEquals(RuleResult.of(expected, new Range(low, high)),
                outcome(new MyelopathyCluster(), gait, hoffmann, supinator, babinski, over45));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "regional-pain.csv", numLinesToSkip = 2)
    void regionalPain(String outOfProportion, String symptoms, String signs, String nothingElse, Outcome expected) {
        String[] s = symptoms.split(" ");
        String[] g = signs.split(" ");
        assertEquals(expected, outcome(new RegionalPainCriteria(), outOfProportion, s[0], s[1], s[2], s[3], g[0], g[1], g[2], g[3],
                nothingElse).outcome());
    }

    @Test
    void turningTheHeadIsNotLookedAtWhenAHighRiskItemIsOpen() {
        assertEquals(Outcome.INCOMPLETE,
                outcome(new CanadianCSpineRule(), "yes", "no", "unknown", "no", "yes", "no", "no").outcome());
    }

    @Test
    void anUnansweredRuleIsIncompleteAndActsAsPositive() {
        for (PublishedRule rule : PublishedRule.ALL) {
            assertEquals(Outcome.INCOMPLETE, rule.evaluate(ScreenAnswers.of(Map.of())).outcome(), rule.id());
        }
        assertTrue(Outcome.INCOMPLETE.callsForAction());
    }

    /** An open answer leaves an outcome only where every way of settling it leads there. */
    @Test
    void aSettledOutcomeHoldsForEveryWayOfSettlingTheOpenAnswers() {
        Random random = new Random(20_260_113);
        for (int round = 0; round < 3_000; round++) {
            for (PublishedRule rule : PublishedRule.ALL) {
                Map<String, Answer> answers = new HashMap<>();
                rule.items().forEach(item -> answers.put(item, Answer.values()[random.nextInt(Answer.values().length)]));
                Outcome outcome = rule.evaluate(ScreenAnswers.of(answers)).outcome();
                if (outcome != Outcome.INCOMPLETE) {
                    Map<String, Answer> settled = new HashMap<>(answers);
                    settled.replaceAll((item, answer) -> answer.open() ? random.nextBoolean() ? Answer.YES : Answer.NO : answer);
                    assertEquals(outcome, rule.evaluate(ScreenAnswers.of(settled)).outcome(), rule.id() + " " + answers + " " + settled);
                }
            }
        }
    }

    private static RuleResult outcome(PublishedRule rule, String... answers) {
        Map<String, Answer> byKey = new HashMap<>();
        assertEquals(rule.items().size(), answers.length, rule.id());
        for (int i = 0; i < answers.length; i++) {
            byKey.put(rule.items().get(i), answer(answers[i]));
        }
        return rule.evaluate(ScreenAnswers.of(byKey));
    }

    private static String known(PublishedRule rule, String item) {
        assertTrue(rule.items().contains(item), item);
        return item;
    }

    private static Answer answer(String text) {
        return switch (text) {
            case "y" -> Answer.YES;
            case "n" -> Answer.NO;
            case "u" -> Answer.UNKNOWN;
            default -> Answer.valueOf(text.toUpperCase(Locale.ROOT));
        };
    }
}
