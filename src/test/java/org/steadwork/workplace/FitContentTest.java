package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.steadwork.content.Content;
import org.steadwork.content.ContentException;
import org.steadwork.workplace.fit.Band;
import org.steadwork.workplace.fit.BodyDimension;
import org.steadwork.workplace.fit.BodyGroup;
import org.steadwork.workplace.fit.BodyMeasure;
import org.steadwork.workplace.fit.CombinedError;
import org.steadwork.workplace.fit.Criterion;
import org.steadwork.workplace.fit.Deviation;

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
