package org.steadwork.redflag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.steadwork.redflag.rules.Catalogue;
import org.steadwork.redflag.rules.Question;
import org.steadwork.redflag.rules.Urgency;

class CatalogueReaderTest {

    private final Catalogue catalogue = new CatalogueReader().read();

    @Test
    void everyQuestionIsThereWithItsLevel() {
        assertEquals(134, catalogue.questions().size());
        assertEquals(40, count(Urgency.EMERGENCY_NOW));
        assertEquals(44, count(Urgency.SAME_DAY));
        assertEquals(30, count(Urgency.URGENT_2_WEEKS));
        assertEquals(10, count(Urgency.DISCUSS_DOCTOR));
        assertEquals(10, count(Urgency.WATCH));
    }

    @Test
    void everyQuestionHasASourceWithATag() {
        for (Question question : catalogue.questions()) {
            assertTrue(question.source().matches(".*\\[(S|M|CP)\\b.*"), question.key() + ": " + question.source());
        }
    }

    @Test
    void noPlainWordsNameAKey() {
        for (Question question : catalogue.questions()) {
            for (String words : List.of(question.prompt(), question.name(), question.pointsTo(), question.action())) {
                assertFalse(words.matches(".*(\\b[a-z]{2,4}_[a-z]|CL-|ALG-).*"), question.key() + ": " + words);
            }
        }
    }

    @Test
    void noRuleCountsAQuestionThatIsOnlyAModifier() {
        Set<String> used = new HashSet<>();
        catalogue.rules().forEach(rule -> used.addAll(rule.keys()));
        assertFalse(used.contains("gen_anticoagulant"));
        assertFalse(used.contains("gen_pregnant"));
    }

    private long count(Urgency urgency) {
        return catalogue.questions().stream().filter(question -> question.urgency() == urgency).count();
    }
}
