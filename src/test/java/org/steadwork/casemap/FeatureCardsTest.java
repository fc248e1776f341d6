package org.steadwork.casemap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.steadwork.body.BodyRegion;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.CardKind;
import org.steadwork.casefile.MapCard;
import org.steadwork.casefile.MapMeasure;
import org.steadwork.casefile.WorkStatus;
import org.steadwork.casefile.WorkStatusCode;
import org.steadwork.casefile.WorkStatusDecider;
import org.steadwork.drawing.PlanMark;
import org.steadwork.exercise.AdherenceEntries;
import org.steadwork.exercise.AdherenceEntry;
import org.steadwork.exercise.ExerciseCatalogue;
import org.steadwork.exercise.PrescribedSide;
import org.steadwork.exercise.Prescription;
import org.steadwork.exercise.Prescriptions;
import org.steadwork.exercise.TestHolds;
import org.steadwork.exercise.dayplan.Adherence;
import org.steadwork.exercise.dayplan.Exercise;
import org.steadwork.exercise.dayplan.PainRule;
import org.steadwork.outcome.Instruments;
import org.steadwork.outcome.Score;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.web.TestCases;
import org.steadwork.workplace.WorkplaceAssessment;
import org.steadwork.workplace.fit.Lenses;

/** What work place, programme and outcomes lay on the map. */
@QuarkusTest
class FeatureCardsTest {

    private static final LocalDate DAY = TestCases.OPENED;

    @Inject
    TestCases cases;

    @Inject
    CaseFiles files;

    @Inject
    FindingCards findings;

    @Inject
    ExerciseCards exercises;

    @Inject
    MeasureCards measures;

    @Inject
    CaseMaps maps;

    @Inject
    Prescriptions prescriptions;

    @Inject
    AdherenceEntries entries;

    @Inject
    ExerciseCatalogue catalogue;

    @Inject
    Instruments instruments;

    @Inject
    EntityManager db;

    @Inject
    TestHolds holds;

    private CaseFile file(long id) {
        return files.withPeople(id).orElseThrow();
    }

    @Transactional
    void found(long caseId, BigDecimal hours, String criterion, BigDecimal deviation, String verdict, String advised, String done, String checked) {
        WorkplaceAssessment assessment = new WorkplaceAssessment(files.findById(caseId), DAY);
        assessment.looksAt("Office", Lenses.SINGLE_OR_NONE, false, null);
        assessment.dayIs(hours, null, null);
        db.persist(assessment);
        db.flush();
        // a finding is made by an assessment only, so the test writes the row
        db.createNativeQuery("insert into workplace_finding (id, version, case_file_id, assessment_id, criterion_id, deviation, verdict, found_on,"
                + " advised_on, done_on, checked_on) values (next value for workplace_finding_seq, 0, ?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)")
                .setParameter(1, caseId).setParameter(2, assessment.id()).setParameter(3, criterion).setParameter(4, deviation)
                .setParameter(5, verdict).setParameter(6, DAY).setParameter(7, date(advised)).setParameter(8, date(done)).setParameter(9, date(checked))
                .executeUpdate();
    }

    private static LocalDate date(String text) {
        return text == null ? null : LocalDate.parse(text);
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    @Test
    void aMeasuredFindingCarriesHowFarItIsOutAndForHowLong() {
        long id = cases.open("Uma", "Findingham");
        // aim 20 below, in range 0 to 60, near the edge to −20: at −80 it is 80 outside, four times the 20 of the edge
        found(id, new BigDecimal("7"), "SC-1", new BigDecimal("-100"), "OUT_OF_RANGE", null, null, null);
        MapCard card = findings.cards(file(id)).get(0);
        assertEquals("SC-1", card.key().ref());
        assertEquals("out", card.state());
        assertEquals(4, card.grounds().deviation(), 1e-9);
        assertEquals(7, card.grounds().hoursADay());
        assertEquals("+100\u00a0mm from the aim", card.grounds().shown());
        assertTrue(card.regions().contains(BodyRegion.NECK));
        assertEquals("e1", card.grounds().evidence());
    }

    @Test
    void anObservedFindingIsRankedByItsGradeAndUnknownHoursStayUnknown() {
        long id = cases.open("Uma", "Observingham");
        found(id, null, "PH-1", null, "OUT_OF_RANGE", null, null, null);
        MapCard card = findings.cards(file(id)).get(0);
        assertEquals(1.5, card.grounds().deviation());
        assertNull(card.grounds().hoursADay());
    }

    @Test
    void whatWasDoneAboutAFindingAnswersIt() {
        long id = cases.open("Uma", "Doneham");
        found(id, new BigDecimal("7"), "PH-1", null, "OUT_OF_RANGE", "2026-03-04", "2026-03-20", null);
        List<MapCard> cards = findings.cards(file(id));
        assertEquals(List.of(CardKind.FINDING, CardKind.ACTION, CardKind.FINDING), cards.stream().map(c -> c.key().kind()).toList());
        MapCard action = cards.get(1);
        assertEquals("In place since 20 Mar 2026", plain(action.line()));
        assertTrue(action.settled());
        assertEquals(cards.get(0).key(), action.answers().iterator().next());
    }

    @Test
    void aFindingThatWasCheckedIsNoCandidateAndGoesWhenNothingHangsOnIt() {
        long id = cases.open("Uma", "Checkedham");
        found(id, new BigDecimal("7"), "PH-1", null, "IN_RANGE", null, null, "2026-03-25");
        found(id, new BigDecimal("7"), "SC-1", new BigDecimal("0"), "IN_RANGE", "2026-03-04", "2026-03-20", "2026-03-25");
        List<MapCard> cards = findings.cards(file(id));
        assertTrue(cards.stream().allMatch(card -> card.grounds() == null));
        MapView map = maps.of(file(id));
        assertEquals(List.of("A Screen top, from eye height", "Looked at on 4 Mar 2026"),
                map.findings().stream().map(cell -> plain(cell.title())).toList());
        assertEquals("nothing off in what was looked at", map.findings().get(1).card().line());
    }

    @Transactional
    Prescription give(long caseId, Exercise exercise, boolean ended) {
        Prescription given = new Prescription(files.findById(caseId), exercise, DAY, "T. Clinician", Instant.EPOCH);
        given.dose(exercise.dose(), PrescribedSide.RIGHT, "light effort", 3, null);
        if (ended) {
            given.end(DAY, "Not needed any more");
        }
        prescriptions.persist(given);
        return given;
    }

    @Transactional
    void kept(Prescription given, Integer done) {
        AdherenceEntry entry = new AdherenceEntry(prescriptions.findById(given.id()), DAY.plusDays(6));
        entry.report(new Adherence(done, 20), null, PainRule.Morning.values()[0], "patient");
        entries.persist(entry);
    }

    @Test
    void exercisesGivenNowStandWithWhatWasReported() {
        long id = cases.open("Uma", "Exercisham");
        Exercise exercise = catalogue.all().stream().filter(e -> e.dose().everyHours() == null).findFirst().orElseThrow();
        Prescription given = give(id, exercise, false);
        give(id, exercise, true);
        assertEquals("Since 4 Mar 2026, nothing reported yet", plain(exercises.cards(file(id)).get(0).line()));
        kept(given, 17);
        List<MapCard> cards = exercises.cards(file(id));
        assertEquals(1, cards.size());
        assertEquals("17 of 20 sessions, week to 10 Mar 2026", plain(cards.get(0).line()));
        assertEquals(exercise.name() + ", right side", cards.get(0).title());
        assertEquals(exercise.regions(), cards.get(0).regions());
    }

    @Test
    void anExerciseThatARedFlagHoldsBackIsMarkedAsSuspended() {
        long id = cases.open("Uma", "Suspendham");
        give(id, catalogue.find("sh_rolls").orElseThrow(), false);
        assertNull(exercises.cards(file(id)).get(0).word());
        holds.suspend(id, "all_treatment", Set.of(), "Legs weak since this morning");
        assertEquals("suspended", exercises.cards(file(id)).get(0).word());
    }

    @Transactional
    void score(long caseId, Instrument instrument, LocalDate day, int answer) {
        Score score = new Score(files.findById(caseId), instrument, day);
        score.record(instrument, java.util.Collections.nCopies(instrument.items().size(), answer), "T. Clinician", Instant.EPOCH);
        db.persist(score);
    }

    @Transactional
    void off(long caseId, LocalDate from) {
        WorkStatus status = new WorkStatus(files.findById(caseId), from);
        status.describe(WorkStatusCode.OFF, null, WorkStatusDecider.DOCTOR, null, null, "T. Clinician", Instant.EPOCH);
        db.persist(status);
    }

    @Test
    void measuresStandWithTheirVerdictAndAVisitWithoutAScoreStaysOpen() {
        long id = cases.open("Uma", "Scoringham");
        Instrument ndi = instruments.find("ndi").orElseThrow();
        score(id, ndi, DAY.plusWeeks(1), 3);
        score(id, ndi, DAY.plusWeeks(5), 1);
        off(id, DAY.plusWeeks(2));
        off(id, DAY.plusWeeks(3));
        List<MapMeasure> list = measures.measures(file(id));
        assertEquals(1, list.size());
        MapMeasure measure = list.get(0);
        assertTrue(measure.main());
        // ten items of 0 to 5: 30 of 50 is 60 %, 10 of 50 is 20 %
        assertEquals("−40", measure.change());
        assertEquals(3, measure.trend().visits().size());
        assertNull(measure.trend().visits().get(0).score());
        assertEquals(60., measure.trend().visits().get(1).score());
        assertEquals(List.of(DAY.plusWeeks(2)), measure.trend().marks().stream().map(PlanMark::date).toList(), "changes of the plan as on the outcomes; off again is no change");
        assertTrue(measure.words().toLowerCase().contains("important"), measure.words());
    }
}
