package org.steadwork.redflag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.steadwork.kernel.Answer;
import org.steadwork.redflag.rules.Catalogue;
import org.steadwork.redflag.rules.LegClotScore;
import org.steadwork.redflag.rules.Occasion;
import org.steadwork.redflag.rules.Raised;
import org.steadwork.redflag.rules.ScreenAnswers;
import org.steadwork.redflag.rules.ScreenResult;
import org.steadwork.redflag.rules.Screening;
import org.steadwork.redflag.rules.Urgency;
import org.steadwork.redflag.rules.Verdict;

/** The safety rules that hold for the evaluation itself; those that hold for stored flags are tested with the pages. */
class ScreeningSafetyTest {

    private static final Catalogue CATALOGUE = new CatalogueReader().read();
    private static final Set<String> NECK = Set.of("neck");

    private final Map<String, Answer> answers = new HashMap<>();

    @Test
    void aScreenWithEveryDueQuestionNoIsClear() {
        allNo(NECK);
        assertEquals(Verdict.CLEAR, neck().verdict());
        assertFalse(neck().incomplete());
        assertEquals(Optional.empty(), neck().couldBe());
        assertEquals(Set.of(), neck().suspended());
    }

    @Test
    void aBlankScreenIsIncomplete() {
        assertEquals(Verdict.INCOMPLETE, neck().verdict());
    }

    @Test
    void neitherUnknownNorNotAskedCountsAsNoForAnyDueQuestion() {
        for (String region : CATALOGUE.regions()) {
            answers.clear();
            allNo(Set.of(region));
            for (ScreenResult.DueKey due : screen(Set.of(region)).due()) {
                for (Answer open : List.of(Answer.UNKNOWN, Answer.NOT_ASKED)) {
                    answers.put(due.key(), open);
                    assertNotEquals(Verdict.CLEAR, screen(Set.of(region)).verdict(), region + " " + due.key() + " " + open);
                }
                answers.put(due.key(), Answer.NO);
            }
        }
    }

    @Test
    void anUnknownQuestionIsRoutedAsIfPositive() {
        allNo(Set.of("low_back"));
        answers.put("lb_ces_bladder", Answer.UNKNOWN);
        ScreenResult result = screen(Set.of("low_back"));
        assertEquals(Verdict.INCOMPLETE, result.verdict());
        assertEquals(Optional.of(Urgency.EMERGENCY_NOW), result.urgency());
        assertTrue(result.suspended().contains("all_treatment"));
    }

    /** No rule looks at this question, so the question alone has to speak. */
    @Test
    void anUnknownQuestionSpeaksWithoutARule() {
        allNo(Set.of("shoulder"));
        answers.put("sh_dislocated", Answer.UNKNOWN);
        assertEquals(Optional.of(Urgency.EMERGENCY_NOW), screen(Set.of("shoulder")).urgency());
    }

    /** The question alone asks for a talk with a doctor; the rule with the neck pain for more. */
    @Test
    void anUnknownAnswerCountsAsYesInsideARule() {
        allNo(NECK);
        answers.put("gen_cancer_history", Answer.UNKNOWN);
        assertEquals(Optional.of(Urgency.URGENT_2_WEEKS), neck().urgency());
        assertNotEquals(Verdict.POSITIVE, neck().verdict());
    }

    @Test
    void anOpenConditionKeepsItsQuestionsDueAndOnlyANoTakesThemAway() {
        for (Answer open : List.of(Answer.YES, Answer.UNKNOWN, Answer.NOT_ASKED)) {
            answers.put("fact_injury_10_days", open);
            assertTrue(kneeInjuryIsDue(), open.label());
        }
        answers.put("fact_injury_10_days", Answer.NO);
        assertFalse(kneeInjuryIsDue());
    }

    private boolean kneeInjuryIsDue() {
        return screen(Set.of("knee")).due().stream().anyMatch(due -> due.key().equals("kn_injury_rule"));
    }

    @Test
    void bloodPressureNotTakenLeavesTheScreenIncompleteAndHandsOnNeckCareSuspended() {
        allNo(NECK);
        answers.put("gen_bp_180_120", Answer.NOT_ASKED);
        assertEquals(Verdict.INCOMPLETE, neck().verdict());
        assertEquals(Set.of("neck_manual", "neck_manipulation", "neck_traction"), neck().suspended());
    }

    @Test
    void theWorstLevelWins() {
        allNo(NECK);
        answers.put("gen_night_pain", Answer.YES);
        answers.put("nk_cord_hands", Answer.YES);
        answers.put("nk_vasc_brain", Answer.YES);
        assertEquals(Optional.of(Urgency.EMERGENCY_NOW), neck().urgency());
        assertEquals(Verdict.POSITIVE, neck().verdict());
    }

    @Test
    void aLowClotScoreDoesNotLowerASwollenCalf() {
        allNo(Set.of("knee"));
        answers.put("kn_dvt", Answer.YES);
        for (String item : new LegClotScore().items()) {
            answers.put(item, Answer.NO);
        }
        answers.put("wells_other_cause", Answer.YES);
        assertEquals(Optional.of(Urgency.SAME_DAY), screen(Set.of("knee")).urgency());
    }

    @Test
    void aLowMyelopathyCountDoesNotCancelACordSymptom() {
        allNo(NECK);
        answers.put("nk_cord_hands", Answer.YES);
        Set.of("dcm_gait", "dcm_hoffmann", "dcm_inverted_supinator", "dcm_babinski", "dcm_over_45").forEach(item -> answers.put(item, Answer.NO));
        assertEquals(Optional.of(Urgency.URGENT_2_WEEKS), neck().urgency());
    }

    @Test
    void cordSymptomsAndSignsTogetherAreSameDayAndSuspendNeckCare() {
        allNo(NECK);
        Set.of("nk_cord_hands", "nk_cord_gait", "nk_cord_signs").forEach(key -> answers.put(key, Answer.YES));
        ScreenResult result = neck();
        assertEquals(Optional.of(Urgency.SAME_DAY), result.urgency());
        assertTrue(result.suspended().containsAll(
                Set.of("neck_manipulation", "neck_traction", "neck_end_range", "nerve_glides", "balance_unsupported")));
        assertTrue(origins(result).contains("CL-CORD-2"));
        assertFalse(origins(result).contains("CL-CORD"), "the weaker rule gives way");
    }

    @Test
    void effortPainIsSameDayAndAsksWhetherItIsThereNow() {
        allNo(Set.of("shoulder"));
        answers.put("sh_cardiac_effort", Answer.YES);
        ScreenResult result = screen(Set.of("shoulder"));
        assertEquals(Optional.of(Urgency.SAME_DAY), result.urgency());
        assertEquals(Optional.of(Urgency.EMERGENCY_NOW), result.couldBe());
        assertTrue(result.open().stream().anyMatch(open -> open.key().equals("fact_heart_pain_now")));
        answers.put("fact_heart_pain_now", Answer.NO);
        answers.put("fact_heart_rest_12_h", Answer.NO);
        assertEquals(Optional.of(Urgency.SAME_DAY), screen(Set.of("shoulder")).couldBe());
        answers.put("fact_heart_pain_now", Answer.YES);
        assertEquals(Optional.of(Urgency.EMERGENCY_NOW), screen(Set.of("shoulder")).urgency());
    }

    @Test
    void aFlagOnARegionNamesTheRegionItSuspends() {
        answers.put("kn_hot_joint", Answer.YES);
        assertTrue(screen(Set.of("knee")).suspended().contains("region_all:knee"));
    }

    @Test
    void twoTicksInsideTheArteryRisksRaiseTheRule() {
        allNo(NECK);
        answers.put("nk_vasc_risk/migraine", Answer.YES);
        assertFalse(origins(neck()).contains("CL-VASC-3"));
        answers.put("nk_vasc_risk/smoker", Answer.YES);
        assertTrue(origins(neck()).contains("CL-VASC-3"));
    }

    @Test
    void aReviewWithSomethingWorseNeedsTheFullSetAgain() {
        allNo(Occasion.REVIEW, NECK);
        assertEquals(Verdict.CLEAR, screen(Occasion.REVIEW, NECK, Set.of()).verdict());
        answers.put("fact_new_or_worse", Answer.YES);
        assertEquals(Verdict.INCOMPLETE, screen(Occasion.REVIEW, NECK, Set.of()).verdict());
        answers.put("fact_new_or_worse", Answer.NOT_ASKED);
        assertEquals(Verdict.INCOMPLETE, screen(Occasion.REVIEW, NECK, Set.of()).verdict());
    }

    @Test
    void aNewRegionAtAReviewIsAskedInFullAndTheOthersAreNot() {
        Set<String> both = Set.of("neck", "knee");
        allNo(Occasion.REVIEW, both);
        assertEquals(Verdict.CLEAR, screen(Occasion.REVIEW, both, Set.of()).verdict());
        ScreenResult result = new Screening(CATALOGUE).evaluate(Occasion.REVIEW, both, Set.of("knee"), Set.of(), ScreenAnswers.of(answers));
        assertEquals(Verdict.INCOMPLETE, result.verdict());
        Set<String> due = result.due().stream().map(ScreenResult.DueKey::key).collect(Collectors.toSet());
        assertTrue(due.contains("kn_locked"), due.toString());
        assertFalse(due.contains("nk_trauma"), due.toString());
    }

    @Test
    void whatAnEarlierScreenLeftOpenIsDueAtTheReview() {
        allNo(Occasion.REVIEW, NECK);
        assertEquals(Verdict.INCOMPLETE, screen(Occasion.REVIEW, NECK, Set.of("gen_bp_180_120")).verdict());
    }

    @Test
    void withoutReportedRegionsEveryRegionIsAskedAbout() {
        Set<String> due = new HashSet<>();
        screen(Set.of()).due().forEach(key -> due.add(key.key()));
        assertTrue(due.containsAll(Set.of("nk_cord_hands", "lb_ces_bladder", "wh_crps", "kn_locked", "af_achilles", "ub_cardiac")));
    }

    @Test
    void noLevelOfTheScreenSaysWhatThePersonHas() {
        for (var question : CATALOGUE.questions()) {
            assertFalse(question.pointsTo().matches("(?i).*\\b(you have|has|is due to|caused by)\\b.*"), question.key());
        }
    }

    private static Set<String> origins(ScreenResult result) {
        return result.raised().stream().map(Raised::origin).collect(Collectors.toSet());
    }

    private void allNo(Set<String> regions) {
        allNo(Occasion.FULL, regions);
    }

    private void allNo(Occasion occasion, Set<String> regions) {
        for (int pass = 0; pass < 2; pass++) {
            screen(occasion, regions, Set.of()).due().forEach(due -> answers.put(due.key(), Answer.NO));
        }
    }

    private ScreenResult neck() {
        return screen(NECK);
    }

    private ScreenResult screen(Set<String> regions) {
        return screen(Occasion.FULL, regions, Set.of());
    }

    private ScreenResult screen(Occasion occasion, Set<String> regions, Set<String> leftOpen) {
        return new Screening(CATALOGUE).evaluate(occasion, regions, leftOpen, ScreenAnswers.of(answers));
    }
}
