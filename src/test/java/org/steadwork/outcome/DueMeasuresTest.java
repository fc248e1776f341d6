package org.steadwork.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.steadwork.body.Side;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.Visits;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.web.Statements;
import org.steadwork.web.TestCases;

@QuarkusTest
class DueMeasuresTest {

    private static final LocalDate FIRST = TestCases.OPENED;

    @Inject
    DueMeasures due;

    @Inject
    PhysicalMeasurements physical;

    @Inject
    Instruments instruments;

    @Inject
    Scores scores;

    @Inject
    Goals goals;

    @Inject
    CaseFiles files;

    @Inject
    Visits visits;

    @Inject
    TestCases cases;

    @Inject
    Statements statements;

    @Test
    void theFirstVisitAsksTheBaselineAndNoRatingOfChange() {
        long id = cases.open("Tamar", "Jessop-Vale");
        List<String> asked = keys(id, FIRST);
        assertTrue(asked.containsAll(List.of("nprs_now", "nprs_average", "nprs_worst", "psfs", "ompsq_sf", "was")), asked.toString());
        assertFalse(asked.contains("groc15"), "nothing has changed yet");
    }

    @Test
    void aReviewAsksWhatIsDueAndNothingElse() {
        long id = cases.open("Silvan", "Kirkby-Thorn");
        for (String key : List.of("nprs_now", "nprs_average", "nprs_worst", "ompsq_sf", "was", "ndi")) {
            score(id, key, FIRST);
        }
        List<String> asked = keys(id, FIRST.plusDays(7));
        assertTrue(asked.contains("nprs_now"), asked.toString());
        assertFalse(asked.contains("was") || asked.contains("ndi") || asked.contains("ompsq_sf"), asked.toString());
        assertTrue(keys(id, FIRST.plusDays(21)).contains("ndi"), "every three weeks");
        assertFalse(keys(id, FIRST.plusDays(60)).contains("ompsq_sf"), "the screen is asked once");
        QuarkusTransaction.requiringNew().run(() -> visits.add(files.findById(id), FIRST.plusDays(7), VisitKind.FOLLOW_UP, Attendance.ATTENDED));
        assertTrue(keys(id, FIRST.plusDays(14)).contains("groc15"), "from the second review on");
        score(id, "groc11", FIRST.plusDays(14));
        assertFalse(keys(id, FIRST.plusDays(15)).contains("groc15"), "one rating of change is enough");
        score(id, "nprs_now", FIRST.plusDays(15));
        assertFalse(keys(id, FIRST.plusDays(15)).contains("nprs_now"), "what was asked today is not asked again");
    }

    /** TestCases holds the first visit; the screen is asked up to the second and not for the first time after it. */
    @Test
    void theScreenForIntakeIsNotAskedLateInACase() {
        long id = cases.open("Iolo", "Screenworth");
        assertTrue(keys(id, FIRST.plusDays(7)).contains("ompsq_sf"), "the second visit still asks it");
        QuarkusTransaction.requiringNew().run(() -> visits.add(files.findById(id), FIRST.plusDays(7), VisitKind.FOLLOW_UP, Attendance.ATTENDED));
        assertFalse(keys(id, FIRST.plusDays(14)).contains("ompsq_sf"));
        assertTrue(keys(id, FIRST.plusDays(14)).contains("psfs"), "an outcome is asked however late it is");
    }

    @Test
    void gripAndMotionComeRoundOnceTheyWereBegun() {
        long id = cases.open("Ulric", "Mossman-Pike");
        assertFalse(keys(id, FIRST.plusDays(28)).contains("grip"), "nobody decided to measure it");
        QuarkusTransaction.requiringNew().run(() -> {
            GripMeasurement grip = new GripMeasurement(files.findById(id), FIRST, Side.RIGHT);
            grip.record(List.of(BigDecimal.valueOf(31), BigDecimal.valueOf(30), BigDecimal.valueOf(32)), null, "T. Clinician", Instant.EPOCH);
            physical.keep(grip);
        });
        assertFalse(keys(id, FIRST).contains("grip") || keys(id, FIRST.plusDays(27)).contains("grip"));
        assertTrue(keys(id, FIRST.plusDays(28)).contains("grip"), "every four weeks");
        assertFalse(keys(id, FIRST.plusDays(28)).contains("rom"), "no motion was measured");
    }

    @Test
    void moreScoresTakeNoMoreStatements() {
        long id = cases.open("Rowena", "Lumley-Hart");
        long few = statements.during(() -> keys(id, FIRST));
        score(id, "ndi", FIRST);
        score(id, "was", FIRST);
        assertEquals(few, statements.during(() -> keys(id, FIRST.plusDays(28))));
    }

    private List<String> keys(long id, LocalDate on) {
        return QuarkusTransaction.requiringNew().call(() -> due.of(id, on)).stream().map(DueMeasures.Due::key).toList();
    }

    private void score(long id, String key, LocalDate on) {
        QuarkusTransaction.requiringNew().run(() -> {
            Instrument instrument = instruments.find(key).orElseThrow();
            Score score = new Score(files.findById(id), instrument, on);
            score.record(instrument, Collections.nCopies(instrument.items().size(), 1), "T. Clinician", Instant.EPOCH);
            scores.persist(score);
        });
    }

    // the days are a proposal of the content
    @Test
    void goalsAreDueAgainTwoWeeksAfterTheyWereSetOrRated() {
        long id = cases.open("Goal", "Duewright");
        Goal goal = QuarkusTransaction.requiringNew().call(() -> {
            Goal set = new Goal(files.findById(id), "Type for an hour", FIRST);
            goals.persist(set);
            return set;
        });
        assertFalse(keys(id, FIRST.plusDays(13)).contains("gas"));
        assertTrue(keys(id, FIRST.plusDays(14)).contains("gas"));
        DueMeasures.Due due = this.due.of(id, FIRST.plusDays(20)).stream().filter(one -> one.key().equals("gas")).findFirst().orElseThrow();
        assertEquals("1 of 1 goal to rate, the longest set or rated on 4 Mar 2026", due.why().replace('\u00a0', ' '));
        QuarkusTransaction.requiringNew().run(() -> goals.getEntityManager().persist(rated(goals.findById(goal.id()))));
        assertFalse(keys(id, FIRST.plusDays(27)).contains("gas"), "rated on day 14");
        assertTrue(keys(id, FIRST.plusDays(28)).contains("gas"));
        QuarkusTransaction.requiringNew().run(() -> goals.findById(goal.id()).giveUp("Another job", FIRST.plusDays(15)));
        assertFalse(keys(id, FIRST.plusDays(40)).contains("gas"), "given up");
    }

    private static GoalRating rated(Goal goal) {
        GoalRating rating = new GoalRating(goal, FIRST.plusDays(14));
        rating.rate(0, "Test", Instant.now());
        return rating;
    }
}
