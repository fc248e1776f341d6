package org.steadwork.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.StringReader;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steadwork.content.Content;
import org.steadwork.content.ContentException;

class ExerciseFiguresTest {

    private static final String GOOD = """
            presets:
              stand: {support: feet, pin: [ankle_R, 0]}
            exercises:
              good:
                name: Good
                frames:
                  - {base: stand}
            """;

    @Test
    void aFigureIsReadByItsKey() {
        assertEquals(Set.of("good"), figures(GOOD));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '"', value = {
            "{base: lean};there is no preset 'lean'",
            "{base: stand, hip.abd: wide};'hip.abd' must be a number, but is wide",
            "{base: stand, pin: [antler, 0]};there is no anchor 'antler'"})
    void aWrongPoseNamesFileLineExerciseAndReason(String frame, String reason) {
        assertProblem(GOOD + "  wrong:\n    name: Wrong\n    frames:\n      - " + frame + "\n", 8, "exercise 'wrong': " + reason);
    }

    @Test
    void aWrongPropOrArrowIsFoundAtTheStartToo() {
        assertProblem(GOOD + "  wrong:\n    props: [{type: trampoline}]\n    frames:\n      - {base: stand}\n", 8,
                "exercise 'wrong': there is no prop 'trampoline'");
        assertProblem(GOOD + "  wrong:\n    arrows: [{wave: [head_top]}]\n    frames:\n      - {base: stand}\n", 8,
                "exercise 'wrong': an arrow needs trace, line, arc or press");
    }

    @Test
    void aFigureWrittenTwiceOrWithoutAMapIsRefused() {
        assertProblem(GOOD + "  good:\n    frames:\n      - {base: stand}\n", 3, "'exercises' must be a map of maps, each key written once");
        assertProblem(GOOD + "  flat: none\n", 3, "'exercises' must be a map of maps, each key written once");
        assertProblem("exercises: {}\n", 1, "'presets' must be a map");
    }

    private static void assertProblem(String yaml, int line, String reason) {
        assertEquals("poses.yaml, line " + line + ": " + reason, assertThrows(ContentException.class, () -> figures(yaml)).getMessage());
    }

    private static Set<String> figures(String yaml) {
        return ExerciseFigures.read(Content.plain("poses.yaml", new StringReader(yaml))).keySet();
    }
}
