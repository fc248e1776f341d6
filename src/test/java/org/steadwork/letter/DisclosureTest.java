package org.steadwork.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.steadwork.content.Content;
import org.steadwork.content.ContentException;
import org.steadwork.letter.disclosure.Decision;
import org.steadwork.letter.disclosure.Decision.Verdict;
import org.steadwork.letter.disclosure.Gate;
import org.steadwork.letter.disclosure.GivenConsent;
import org.steadwork.letter.disclosure.Ground;
import org.steadwork.letter.disclosure.InformationCategory;
import org.steadwork.letter.disclosure.Matrix;
import org.steadwork.letter.disclosure.Reader;
import org.steadwork.letter.disclosure.Recipient;

class DisclosureTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private final Matrix matrix = DisclosureContent.read();

    private static GivenConsent consent(InformationCategory... ticked) {
        return new GivenConsent(TODAY.minusDays(10), TODAY.plusMonths(6), Optional.empty(), Set.of(ticked));
    }

    private static Reader reader(Recipient kind, GivenConsent consent) {
        return Reader.of(kind, Optional.of(consent), TODAY);
    }

    @Test
    void example1EmployerFunctionNeedsNoTick() {
        Decision decision = matrix.decide(InformationCategory.FUNCTIONAL_CAPACITY, reader(Recipient.EMPLOYER, consent()));
        assertEquals(Verdict.ALLOW, decision.verdict());
        assertFalse(decision.byTick());
    }

    @Test
    void example2EmployerDiagnosisUnticked() {
        assertEquals(Verdict.BLOCK, matrix.decide(InformationCategory.DIAGNOSIS, reader(Recipient.EMPLOYER, consent())).verdict());
    }

    @Test
    void example3EmployerDiagnosisTickedIsLogged() {
        Decision decision = matrix.decide(InformationCategory.DIAGNOSIS,
                reader(Recipient.EMPLOYER, consent(InformationCategory.DIAGNOSIS)));
        assertEquals(Verdict.ALLOW, decision.verdict());
        assertTrue(decision.byTick());
    }

    @Test
    void example4WithdrawnYesterday() {
        GivenConsent withdrawn = new GivenConsent(TODAY.minusDays(10), TODAY.plusMonths(6), Optional.of(TODAY.minusDays(1)),
                Set.of(InformationCategory.WORK_MODIFICATIONS));
        assertEquals(Verdict.BLOCK, matrix.decide(InformationCategory.WORK_MODIFICATIONS, reader(Recipient.EMPLOYER, withdrawn)).verdict());
    }

    @Test
    void example5PainScoresNeverGoToAnEmployer() {
        Decision decision = matrix.decide(InformationCategory.PAIN_SCORES,
                reader(Recipient.EMPLOYER, consent(InformationCategory.PAIN_SCORES)));
        assertEquals(Verdict.BLOCK, decision.verdict());
        assertTrue(decision.reason().contains("never"));
    }

    @Test
    void example6EmergencyWithoutConsentTakesTheOverridePath() {
        Reader doctor = Reader.of(Recipient.DOCTOR, Optional.empty(), TODAY);
        Decision decision = matrix.decide(InformationCategory.RED_FLAG_RESULT, doctor, Optional.of(Ground.VITAL_INTERESTS));
        assertEquals(Verdict.OVERRIDE, decision.verdict());
        assertFalse(decision.allowed());
        assertEquals(Verdict.BLOCK, matrix.decide(InformationCategory.RED_FLAG_RESULT, doctor).verdict());
    }

    @Test
    void example7PsychosocialNotesNeverGoToAnInsurer() {
        assertEquals(Verdict.BLOCK, matrix.decide(InformationCategory.PSYCHOSOCIAL_NOTES,
                reader(Recipient.INSURER, consent(InformationCategory.PSYCHOSOCIAL_NOTES))).verdict());
    }

    @Test
    void example8EmployerInTheRoomMakesItTheEmployersColumn() {
        Reader clinicians = reader(Recipient.CASE_REVIEW, consent());
        Reader employer = Reader.of(Recipient.EMPLOYER, Optional.empty(), TODAY);
        assertTrue(matrix.decide(InformationCategory.SYMPTOMS, clinicians).allowed());
        assertEquals(Verdict.BLOCK,
                matrix.decide(InformationCategory.SYMPTOMS, List.of(clinicians, employer), Optional.empty()).verdict());
    }

    @Test
    void noGroundOpensWhatTheMatrixClosesForGood() {
        for (Ground ground : Ground.values()) {
            Reader employer = Reader.of(Recipient.EMPLOYER, Optional.empty(), TODAY);
            assertEquals(Verdict.BLOCK, matrix.decide(InformationCategory.RED_FLAG_RESULT, employer, Optional.of(ground)).verdict());
        }
    }

    @ParameterizedTest
    @EnumSource(value = Gate.class, names = "IN_FORCE", mode = EnumSource.Mode.EXCLUDE)
    void onlyAConsentInForceOpensTheGate(Gate gate) {
        for (Recipient kind : Recipient.values()) {
            for (InformationCategory category : InformationCategory.values()) {
                Decision decision = matrix.decide(category, new Reader(kind, gate, Set.of(InformationCategory.values())));
                assertEquals(kind == Recipient.WORKER, decision.allowed(), kind + " " + category + " " + gate);
            }
        }
    }

    @Test
    void theWorkerMaySeeEverything() {
        for (InformationCategory category : InformationCategory.values()) {
            assertTrue(matrix.decide(category, Reader.of(Recipient.WORKER, Optional.empty(), TODAY)).allowed());
        }
    }

    @Test
    void consentHoldsOnItsFirstAndLastDayAndNotBeside() {
        GivenConsent given = new GivenConsent(TODAY, TODAY.plusDays(5), Optional.empty(), Set.of());
        assertEquals(Gate.NOT_YET, given.on(TODAY.minusDays(1)));
        assertEquals(Gate.IN_FORCE, given.on(TODAY));
        assertEquals(Gate.IN_FORCE, given.on(TODAY.plusDays(5)));
        assertEquals(Gate.EXPIRED, given.on(TODAY.plusDays(6)));
        GivenConsent withdrawnToday = new GivenConsent(TODAY, TODAY.plusDays(5), Optional.of(TODAY), Set.of());
        assertEquals(Gate.WITHDRAWN, withdrawnToday.on(TODAY));
    }

    /** The table as it was drawn up on paper, written out a second time, apart from the content file. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "disclosure-matrix.csv", numLinesToSkip = 2)
    void matrixAsDrawnUp(String category, String worker, String employer, String doctor, String specialist, String insurer, String review) {
        String[] expected = {worker, employer, doctor, specialist, insurer, review};
        for (Recipient recipient : Recipient.values()) {
            assertEquals(expected[recipient.ordinal()],
                    matrix.cell(InformationCategory.valueOf(category.toUpperCase(Locale.ROOT)), recipient).rule().name().substring(0, 1),
                    category + " to " + recipient);
        }
    }

    @Test
    void aProfileClosesAndOpensWhatItSaysAndNothingElse() {
        Matrix strict = DisclosureProfile.over(matrix, "strict");
        assertEquals("NEVER", strict.cell(InformationCategory.SYMPTOMS, Recipient.EMPLOYER).rule().name());
        Matrix contract = DisclosureProfile.over(matrix, "attendance_by_contract");
        assertEquals("ALLOWED", contract.cell(InformationCategory.ATTENDANCE, Recipient.EMPLOYER).rule().name());
        for (InformationCategory category : InformationCategory.values()) {
            for (Recipient recipient : Recipient.values()) {
                assertEquals(matrix.cell(category, recipient), DisclosureProfile.over(matrix, "general").cell(category, recipient));
                if (recipient != Recipient.EMPLOYER) {
                    assertEquals(matrix.cell(category, recipient), strict.cell(category, recipient), category + " to " + recipient);
                }
            }
        }
        assertThrows(IllegalStateException.class, () -> DisclosureProfile.over(matrix, "no_such"));
    }

    @Test
    void noProfileOpensWhatNeverGoes() {
        ContentException problem = assertThrows(ContentException.class, () -> DisclosureProfile.over(matrix, "x", Content.yaml("x.yaml", new StringReader("""
                source: invented
                profiles:
                  - {key: x, label: X, changes: [{category: pain_scores, recipient: employer, rule: A, tag: CP}]}
                """))));
        assertTrue(problem.getMessage().contains("cannot be changed by a profile"), problem.getMessage());
    }

    @Test
    void aHoleInTheTableStopsTheStart() {
        assertThrows(ContentException.class, () -> DisclosureContent.read(Content.yaml("x.yaml", new StringReader("""
                source: invented
                categories:
                  - {key: identity, label: Name, worker: A, employer: A, doctor: A, specialist: A, insurer: A, case_review: A, tag: CP}
                """))));
        assertTrue(assertThrows(ContentException.class, () -> DisclosureContent.read(Content.yaml("x.yaml", new StringReader("""
                source: invented
                categories:
                  - {key: identity, label: Name, worker: A, employer: maybe, doctor: A, specialist: A, insurer: A, case_review: A, tag: CP}
                """)))).getMessage().contains("line 3"));
    }
}
