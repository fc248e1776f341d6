package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.steadwork.content.Content;
import org.steadwork.content.ContentException;
import org.steadwork.content.Entry;
import org.steadwork.workplace.fit.Assessor;
import org.steadwork.workplace.fit.Band;
import org.steadwork.workplace.fit.BodyDimension;
import org.steadwork.workplace.fit.BodyGroup;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.CombinedError;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.CriterionResult;
import org.steadwork.workplace.fit.Deviation;
import org.steadwork.workplace.fit.Grade;
import org.steadwork.workplace.fit.Lenses;
import org.steadwork.workplace.fit.Measurement;
import org.steadwork.workplace.fit.Person;
import org.steadwork.workplace.fit.Settings;
import org.steadwork.workplace.fit.Verdict;
import org.steadwork.workplace.fit.Workstation;

class FitContentTest {

    @Test
    void everyCriterionHasASourceATargetAndAnAdjustment() {
        List<Criterion> criteria = FitContent.criteria();
        assertEquals(68, criteria.size());
        for (Criterion criterion : criteria) {
            assertTrue(criterion.source().length() > 2, criterion.id());
            assertFalse(criterion.kind() != Criterion.Kind.OBSERVED && criterion.unit().isEmpty(), criterion.id());
        }
    }

    @Test
    void everyCriterionOfTheListStandsInContentWithItsEvidence() throws IOException {
        Map<String, Criterion> byId = FitContent.criteria().stream().collect(Collectors.toMap(Criterion::id, c -> c));
        try (Reader reader = new InputStreamReader(FitContentTest.class.getResourceAsStream("criteria.csv"), StandardCharsets.UTF_8)) {
            List<Entry> listed = Content.csv("criteria.csv", reader);
            for (Entry row : listed) {
                assertEquals(row.text("evidence"), byId.get(row.text("id")).evidence().name(), row.text("id"));
            }
            assertEquals(listed.size(), byId.size());
        }
    }

    /** Measured ones give a signed deviation, observed ones a grade, and what nobody looked at stays unknown and is counted. */
    @Test
    void everyCriterionCanBeJudgedAndIsUnknownUntilThen() {
        Person nobody = Person.of(Map.of(), Lenses.SINGLE_OR_NONE);
        Workstation nothing = Workstation.of(Map.of(), Settings.UNKNOWN, 30, 30);
        Assessor assessor = new Assessor(FitContent.criteria(), TestTargets.TARGETS);
        var unseen = assessor.judge(new Assessor.Found(nobody, nothing, 1, Double.NaN, Map.of(), Map.of()));
        assertEquals(67, unseen.stream().filter(result -> result.verdict() == Verdict.NOT_LOOKED_AT).count());
        for (Criterion criterion : FitContent.criteria()) {
            if (criterion.kind() == Criterion.Kind.MEASURED) {
                double beyond = Double.isFinite(criterion.bands().amber().high()) ? criterion.bands().amber().high() + 1 : criterion.bands().amber().low() - 1;
                CriterionResult result = one(assessor, criterion, Map.of(criterion.reads(), Measurement.measured(beyond, 0)), Map.of());
                assertEquals(Verdict.OUT_OF_RANGE, result.verdict(), criterion.id());
                assertEquals(Math.signum(beyond - criterion.bands().green().clip(beyond)), Math.signum(result.deviation()), criterion.id());
            } else if (criterion.kind() == Criterion.Kind.OBSERVED) {
                CriterionResult result = one(assessor, criterion, Map.of(), Map.of(criterion.id(), Grade.PARTLY));
                assertEquals(Verdict.NEAR_THE_EDGE, result.verdict(), criterion.id());
                assertTrue(Double.isNaN(result.deviation()), criterion.id());
            }
        }
    }

    private static CriterionResult one(Assessor assessor, Criterion criterion, Map<String, Measurement> measured, Map<String, Grade> seen) {
        Person nobody = Person.of(Map.of(), Lenses.SINGLE_OR_NONE);
        Workstation nothing = Workstation.of(Map.of(), Settings.UNKNOWN, 30, 30);
        return assessor.judge(new Assessor.Found(nobody, nothing, 1, Double.NaN, measured, seen)).stream()
                .filter(result -> result.criterion().id().equals(criterion.id())).findFirst().orElseThrow();
    }

    @Test
    void everyPopulationHasASourceAndANote() {
        TestTargets.POPULATIONS.values().forEach(population -> {
            assertTrue(population.source().length() > 20, population.id());
            assertTrue(population.note().length() > 20, population.id());
        });
        assertEquals(2, TestTargets.POPULATIONS.size());
    }

    @Test
    void everyDeviationOfTheFitIsJudgedByACriterion() {
        Set<Deviation> judged = FitContent.criteria().stream().map(Criterion::deviation).filter(d -> d != null).collect(Collectors.toSet());
        assertEquals(Set.of(Deviation.values()), judged);
    }

    @Test
    void everyMeasureIsDescribed() {
        assertEquals(BodyMeasure.values().length, FitContent.measures().size());
    }

    @Test
    void bandsMayBeOpen() throws Exception {
        var entry = Content.yaml("x", new StringReader("a: \"-30..10\"\nb: \"20..\"\nc: \"..60\"\nd: \"10-20\"\n"));
        assertEquals(new Band(-30, 10), FitContent.band(entry, "a"));
        assertEquals(new Band(20, Double.POSITIVE_INFINITY), FitContent.band(entry, "b"));
        assertEquals(new Band(Double.NEGATIVE_INFINITY, 60), FitContent.band(entry, "c"));
        assertThrows(ContentException.class, () -> FitContent.band(entry, "d"));
    }

    /** The composite equations were fitted on their own; the correlations must lead from their parts to the same errors. */
    @Test
    void correlatedErrorsAddUpToTheCompositeEquations() {
        var estimates = AnthropometryContent.estimates();
        for (BodyGroup group : BodyGroup.values()) {
            double stature = group == BodyGroup.MALE ? 1760 : 1630;
            var popliteal = estimates.estimate(BodyDimension.POPLITEAL_HEIGHT, group, stature, java.util.OptionalDouble.empty());
            for (var pair : Map.of(BodyDimension.ELBOW_REST_HEIGHT, BodyDimension.FLOOR_TO_ELBOW, BodyDimension.EYE_HEIGHT_SITTING,
                    BodyDimension.FLOOR_TO_EYE, BodyDimension.THIGH_CLEARANCE, BodyDimension.FLOOR_TO_THIGH_TOP).entrySet()) {
                double r = TestTargets.CORRELATIONS.get(group).get(false).between(BodyDimension.POPLITEAL_HEIGHT, pair.getKey());
                var part = estimates.estimate(pair.getKey(), group, stature, java.util.OptionalDouble.empty());
                var sum = estimates.estimate(pair.getValue(), group, stature, java.util.OptionalDouble.empty());
                assertEquals(sum.standardError(), CombinedError.ofSum(popliteal.standardError(), part.standardError(), r), 0.01, pair.getValue().name());
                assertEquals(sum.value(), popliteal.value() + part.value(), 0.01, pair.getValue().name());
            }
        }
    }
}
