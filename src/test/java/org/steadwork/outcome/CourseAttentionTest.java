package org.steadwork.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.steadwork.casefile.Attention;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.CaseScope;
import org.steadwork.casefile.CloseReason;
import org.steadwork.web.Statements;
import org.steadwork.web.TestCases;

@QuarkusTest
class CourseAttentionTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 4, 20);

    @Inject
    CourseAttention worse;

    @Inject
    Instruments instruments;

    @Inject
    Scores scores;

    @Inject
    CaseFiles files;

    @Inject
    TestCases cases;

    @Inject
    Statements statements;

    // NDI: MDC90 9.4 percentage points (Stratford 1999), so 20 to 32 % is worse by more than error and 20 to 24 % is not
    @Test
    void aScoreWorseThanErrorIsNamedUntilALaterOneIsNot() {
        long id = cases.open("Emrys", "Talbot-Vane");
        score(id, 4, List.of(1, 1, 1, 1, 1, 1, 1, 1, 1, 1));
        score(id, 11, List.of(2, 1, 1, 1, 1, 1, 1, 1, 1, 2));
        assertTrue(of(id).isEmpty(), "4 points are within error");
        score(id, 18, List.of(2, 2, 2, 2, 2, 2, 2, 2, 2, 2));
        List<Attention.Entry> entries = of(id);
        assertEquals(1, entries.size());
        assertTrue(entries.get(0).reason().contains("24") && entries.get(0).reason().contains("40"), entries.get(0).reason());
        assertEquals(LocalDate.of(2026, 3, 18), entries.get(0).since());
        score(id, 25, List.of(2, 2, 2, 2, 2, 2, 2, 2, 1, 1));
        assertTrue(of(id).isEmpty());
    }

    // NDI 24 three times over four weeks: range 0 under error 9.4 (Stratford 1999), no gain expected; the rule itself is ours
    @Test
    void aCaseThatStandsStillIsNamedWithItsScores() {
        long id = cases.open("Isolde", "Nunn-Carver");
        score(id, 4, List.of(2, 2, 2, 2, 2, 2, 2, 2, 2, 2));
        score(id, 11, List.of(2, 2, 1, 1, 1, 1, 1, 1, 1, 1));
        score(id, 18, List.of(2, 2, 1, 1, 1, 1, 1, 1, 1, 1));
        assertTrue(of(id).isEmpty(), "two weeks are too few");
        score(id, 31, List.of(2, 2, 1, 1, 1, 1, 1, 1, 1, 1));
        assertTrue(of(id).isEmpty(), "27 days are not four weeks");
        score(id, LocalDate.of(2026, 4, 8), List.of(2, 2, 1, 1, 1, 1, 1, 1, 1, 1));
        List<Attention.Entry> entries = of(id);
        assertEquals(1, entries.size());
        assertEquals("Standstill", entries.get(0).label());
        assertTrue(entries.get(0).reason().contains("24"), entries.get(0).reason());
        score(id, LocalDate.of(2026, 4, 15), List.of(0, 0, 0, 0, 0, 0, 0, 0, 0, 0));
        assertTrue(of(id).isEmpty(), "it moves again");
    }

    @Test
    void aClosedCaseIsNotNamed() {
        long id = cases.open("Sorcha", "Wainfleet");
        score(id, 4, List.of(0, 0, 0, 0, 0, 0, 0, 0, 0, 0));
        score(id, 18, List.of(3, 3, 3, 3, 3, 3, 3, 3, 3, 3));
        assertEquals(1, of(id).size());
        close(id);
        assertTrue(of(id).isEmpty());
    }

    @Test
    void moreCasesTakeNoMoreStatements() {
        cases.open("Una", "Harrowgate");
        long few = statements.during(() -> worse.entries(TODAY, CaseScope.all()));
        for (int i = 0; i < 5; i++) {
            long id = cases.open("Una " + i, "Harrowgate");
            score(id, 4, List.of(1, 1, 1, 1, 1, 1, 1, 1, 1, 1));
        }
        assertEquals(few, statements.during(() -> worse.entries(TODAY, CaseScope.all())));
    }

    void score(long id, int day, List<Integer> answers) {
        score(id, LocalDate.of(2026, 3, day), answers);
    }

    @Transactional
    void score(long id, LocalDate day, List<Integer> answers) {
        Score score = new Score(files.findById(id), instruments.find("ndi").orElseThrow(), day);
        score.record(instruments.find("ndi").orElseThrow(), answers, "T. Clinician", Instant.EPOCH);
        scores.persist(score);
    }

    @Transactional
    void close(long id) {
        files.findById(id).close(LocalDate.of(2026, 4, 1), CloseReason.GOALS_MET, null);
    }

    private List<Attention.Entry> of(long id) {
        return worse.entries(TODAY, CaseScope.one(id));
    }
}
