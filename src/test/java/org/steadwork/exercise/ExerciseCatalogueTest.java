package org.steadwork.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.steadwork.body.BodyRegion;
import org.steadwork.content.Content;
import org.steadwork.content.Entry;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.Precaution;
import org.steadwork.exercise.dayplan.SuspensionRule.Level;
import org.steadwork.exercise.dayplan.WorkingDay;
import org.steadwork.kernel.Answer;

class ExerciseCatalogueTest {

    private static final ExerciseCatalogue CATALOGUE = new ExerciseCatalogue();

    @Test
    void everyExerciseHasAFigureAndEveryFigureAnExercise() {
        Set<String> keys = CATALOGUE.all().stream().map(Exercise::key).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(61, keys.size());
        assertEquals(keys, new TreeSet<>(new ExerciseFigures().keys()));
    }

    @Test
    void everyExerciseSaysFrequencyIntensityTimeAndType() {
        for (Exercise exercise : CATALOGUE.all()) {
            assertTrue(exercise.dose().secondsASession(exercise.tempo()) > 0, exercise.key());
            assertTrue(WorkingDay.USUAL.sessionsAWeek(exercise.dose()) >= 1, exercise.key());
            assertTrue(!exercise.kind().effort().isBlank(), exercise.key());
            assertTrue(!exercise.source().isBlank(), exercise.key());
        }
    }

    @Test
    void everyConditionIsNamedBySomeExercise() {
        Set<String> named = CATALOGUE.all().stream().flatMap(e -> e.precautions().stream()).map(Precaution::condition).collect(Collectors.toSet());
        assertEquals(new TreeSet<>(CATALOGUE.conditions().stream().map(Condition::key).toList()), new TreeSet<>(named));
    }

    /** Source: planned sessions a week at 8 h and 5 days, worked by hand from the doses commonly given; common practice, no source. */
    @ParameterizedTest
    @CsvSource({"nk_sidebend_stretch, 20", "ef_ext_slow_lower, 7", "af_heel_raise, 3", "af_heel_drop, 14"})
    void plannedSessionsOfTheCataloguesDoses(String key, int sessions) {
        assertEquals(sessions, WorkingDay.USUAL.sessionsAWeek(CATALOGUE.find(key).orElseThrow().dose()));
    }

    /** Source: which suspension holds back which exercise: common practice, no source. */
    @ParameterizedTest(name = "{0}, flag in {1}: {2} is {3}")
    @CsvFileSource(resources = "suspensions.csv", numLinesToSkip = 1)
    void suspensionsHoldExercisesBack(String token, String region, String key, Level level) {
        Set<BodyRegion> flagged = region == null ? Set.of() : Set.of(BodyRegion.of(region));
        assertEquals(level, CATALOGUE.suspension(token).effect(CATALOGUE.find(key).orElseThrow(), flagged).level());
    }

    @Test
    void everySuspensionOfTheRedFlagContentIsKnownHere() {
        for (Entry token : Content.yaml("red-flags/suspensions.yaml").entries("tokens")) {
            assertTrue(CATALOGUE.suspensionTokens().contains(token.text("token")), token.text("token"));
        }
    }

    @Test
    void aSuspensionThatContentDoesNotKnowHoldsBackEverything() {
        for (Exercise exercise : CATALOGUE.all()) {
            assertEquals(Level.BLOCKED, CATALOGUE.suspension("made_up_tomorrow").effect(exercise, Set.of(BodyRegion.KNEE)).level());
        }
    }

    @ParameterizedTest
    @CsvSource({"true, YES, BARRED", "true, NO, NONE", "true, UNKNOWN, CONSIDER", "true, NOT_ASKED, CONSIDER",
        "false, YES, CONSIDER", "false, NO, NONE", "false, UNKNOWN, CONSIDER", "false, NOT_ASKED, CONSIDER"})
    void anOpenAnswerIsNeverNo(boolean bars, Answer answer, Precaution.Effect effect) {
        assertEquals(effect, new Precaution(bars, "pregnant", "").effect(answer));
    }

    @Test
    void aPrecautionKeepsItsNote() {
        Precaution precaution = CATALOGUE.find("lb_bridge").orElseThrow().precautions().get(0);
        assertEquals(new Precaution(false, "pregnant_late", "short, propped or side"), precaution);
    }

    @Test
    void theCatalogueIsFilteredByRegionAndKeepsTheGeneralOnes() {
        Set<String> neck = CATALOGUE.forRegions(Set.of(BodyRegion.NECK)).stream().map(Exercise::key).collect(Collectors.toSet());
        assertTrue(neck.containsAll(Set.of("nk_rotation", "sh_rolls", "gn_posture_break")));
        assertTrue(!neck.contains("af_heel_raise") && !neck.contains("lb_bridge"));
        assertEquals(61, CATALOGUE.forRegions(Set.of()).size());
    }
}
