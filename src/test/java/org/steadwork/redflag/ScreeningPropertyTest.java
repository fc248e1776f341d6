package org.steadwork.redflag;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.steadwork.kernel.Answer;
import org.steadwork.redflag.rules.Catalogue;
import org.steadwork.redflag.rules.Occasion;
import org.steadwork.redflag.rules.PublishedRule;
import org.steadwork.redflag.rules.ScreenAnswers;
import org.steadwork.redflag.rules.ScreenResult;
import org.steadwork.redflag.rules.Screening;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.redflag.rules.Verdict;

/** Laws that hold for every screen, tried on seeded random ones; a failure prints the screen. */
class ScreeningPropertyTest {

    /** Raise it for a long run: {@code -Dsteadwork.rounds=20000}. */
    private static final int ROUNDS = Integer.getInteger("steadwork.rounds", 1_000);
    private static final Catalogue CATALOGUE = new CatalogueReader().read();
    private static final Screening SCREENING = new Screening(CATALOGUE);

    private final Random random = new Random(134_2026);

    @Test
    void aFurtherYesNeverLowersTheLevelNorClears() {
        for (int round = 0; round < ROUNDS; round++) {
            Case before = random();
            Case after = before.with(pick(keysThatSpeakForDanger()), Answer.YES);
            assertNotLower(before, before.result().urgency(), after, after.result().urgency());
            assertNotLower(before, before.result().couldBe(), after, after.result().couldBe());
            assertTrue(after.result().verdict() == Verdict.POSITIVE || before.result().verdict() != Verdict.POSITIVE, () -> before + "\n" + after);
            assertTrue(after.result().suspended().containsAll(suspendedByAnswers(before)), () -> before + "\n" + after);
        }
    }

    @Test
    void takingANoBackNeverLowersTheLevelNorClears() {
        for (int round = 0; round < ROUNDS; round++) {
            Case before = random();
            List<String> answeredNo = before.answers.entrySet().stream().filter(entry -> entry.getValue() == Answer.NO)
                    .map(Map.Entry::getKey).filter(keysThatSpeakForDanger()::contains).sorted().toList();
            if (answeredNo.isEmpty()) {
                continue;
            }
            Case after = before.with(pick(answeredNo), random.nextBoolean() ? Answer.UNKNOWN : Answer.NOT_ASKED);
            assertNotLower(before, before.result().urgency(), after, after.result().urgency());
            assertNotLower(before, before.result().couldBe(), after, after.result().couldBe());
            assertTrue(after.result().verdict() != Verdict.CLEAR || before.result().verdict() == Verdict.CLEAR, () -> before + "\n" + after);
        }
    }

    /** Starts from clear screens, since random ones are hardly ever clear. */
    @Test
    void noDueQuestionCanBeLeftOpenInAClearScreen() {
        int tried = 0;
        for (int round = 0; round < 300; round++) {
            Case clear = new Case(random.nextBoolean() ? Occasion.FULL : Occasion.REVIEW, regions(), new HashMap<>());
            for (int pass = 0; pass < 2; pass++) {
                clear.result().due().forEach(due -> clear.answers.put(due.key(), Answer.NO));
            }
            assertTrue(clear.result().verdict() == Verdict.CLEAR, clear::toString);
            for (ScreenResult.DueKey due : clear.result().due()) {
                assertNotEquals(Verdict.CLEAR, clear.with(due.key(), Answer.UNKNOWN).result().verdict(), due::key);
                assertNotEquals(Verdict.CLEAR, clear.with(due.key(), Answer.NOT_ASKED).result().verdict(), due::key);
                tried++;
            }
        }
        assertTrue(tried > 3_000);
    }

    @Test
    void aClearScreenSuspendsNothingAndAnIncompleteOneSaysWhatIsOpen() {
        for (int round = 0; round < ROUNDS; round++) {
            Case one = random();
            ScreenResult result = one.result();
            if (result.verdict() == Verdict.CLEAR) {
                assertTrue(result.raised().isEmpty() && result.open().isEmpty() && result.suspended().isEmpty(), one::toString);
            }
            if (result.verdict() == Verdict.INCOMPLETE) {
                assertTrue(!result.open().isEmpty() || result.raised().stream().anyMatch(raised -> !raised.certain()), one::toString);
            }
        }
    }

    /** What yes and unknown answers suspend, without what waits for questions not asked. */
    private static Set<String> suspendedByAnswers(Case one) {
        Set<String> tokens = new HashSet<>();
        one.result().raised().forEach(raised -> tokens.addAll(raised.suspends()));
        return tokens;
    }

    private static void assertNotLower(Case before, Optional<Urgency> was, Case after, Optional<Urgency> is) {
        assertTrue(was.isEmpty() || is.isPresent() && is.get().atLeast(was.get()),
                () -> was + " became " + is + "\n" + before + "\n" + after);
    }

    /** Every key except the items that speak against danger in a published rule, which no level rests on. */
    private static List<String> keysThatSpeakForDanger() {
        List<String> keys = new ArrayList<>();
        CATALOGUE.questions().forEach(question -> {
            keys.add(question.key());
            question.ticks().forEach(tick -> keys.add(question.key() + "/" + tick.key()));
        });
        CATALOGUE.facts().forEach(fact -> keys.add(fact.key()));
        PublishedRule.ALL.forEach(rule -> keys.addAll(rule.items()));
        return keys;
    }

    private Case random() {
        Map<String, Answer> answers = new HashMap<>();
        double answered = random.nextDouble();
        double yes = random.nextDouble() * 0.1;
        double unknown = random.nextDouble() * 0.1;
        for (String key : keysThatSpeakForDanger()) {
            if (random.nextDouble() < answered) {
                double dice = random.nextDouble();
                answers.put(key, dice < yes ? Answer.YES : dice < yes + unknown ? Answer.UNKNOWN : Answer.NO);
            }
        }
        return new Case(random.nextBoolean() ? Occasion.FULL : Occasion.REVIEW, regions(), answers);
    }

    private Set<String> regions() {
        Set<String> regions = new HashSet<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            regions.add(pick(CATALOGUE.regions()));
        }
        return regions;
    }

    private String pick(List<String> keys) {
        return keys.get(random.nextInt(keys.size()));
    }

    private record Case(Occasion occasion, Set<String> regions, Map<String, Answer> answers) {

        Case with(String key, Answer answer) {
            Map<String, Answer> more = new HashMap<>(answers);
            more.put(key, answer);
            return new Case(occasion, regions, more);
        }

        ScreenResult result() {
            return SCREENING.evaluate(occasion, regions, Set.of(), ScreenAnswers.of(answers));
        }
    }
}
