package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingGradeTest {

    /** Source: worked by hand from the formula of Kincaid et al. 1975: 0.39 × words / sentences + 11.8 × syllables / words − 15.59. */
    @ParameterizedTest
    @CsvSource({"100, 5, 150, 9.91", "100, 10, 130, 3.65", "13, 1, 24, 11.26", "6, 1, 6, -1.45"})
    void theFormulaIsTheOnePublished(int words, int sentences, int syllables, double grade) {
        assertEquals(grade, ReadingGrade.grade(words, sentences, syllables), 0.005);
    }

    /** Source: syllables as English dictionaries part these words; from memory. */
    @ParameterizedTest
    @CsvSource({"a, 1", "the, 1", "move, 1", "moves, 1", "table, 2", "asked, 1", "needed, 2", "shoulder, 2", "exercise, 3", "physiotherapist, 6", "yes, 1",
        "morning, 2", "limits, 2", "changes, 2", "practicable, 4", "advice, 2", "hurt, 1", "always, 2", "emergency, 4"})
    void syllablesAreCountedAsSpoken(String word, int syllables) {
        assertEquals(syllables, ReadingGrade.syllables(word), word);
    }

    @Test
    void shortWordsInShortSentencesReadEasierThanLongOnesInLong() {
        String plain = "You can move it. It may hurt a bit. That is fine. Do it three times a day. Stop if it gets worse. Call us if you are not sure. We can help you.";
        String heavy = "Notwithstanding intermittent exacerbations attributable to occupational exposure, continuation of individualised rehabilitative interventions "
                + "in the domestic environment remains demonstrably advantageous, provided that contraindications communicated previously are comprehensively appreciated by the participating individuals themselves.";
        assertTrue(ReadingGrade.of(plain).getAsDouble() < 4, plain);
        assertTrue(ReadingGrade.of(heavy).getAsDouble() > 20, heavy);
    }

    @Test
    void aShortTextIsNotJudged() {
        assertTrue(ReadingGrade.of("Too short to say.").isEmpty());
    }
}
