package org.steadwork.workplace.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.steadwork.workplace.TestTargets.ESTIMATES;

import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class BodyEstimateTest {

    private static final double HALF_OF_THE_LAST_PRINTED_DIGIT = 0.05 + 1e-3;

    @ParameterizedTest(name = "{0} {1} mm {2} kg {3}")
    @CsvFileSource(resources = "body-estimates.csv", numLinesToSkip = 2)
    void estimatesMatchTheWorkedExamples(String group, double stature, Double mass, String dimension, double value, double halfWidth) {
        BodyEstimate estimate = ESTIMATES.estimate(BodyDimension.valueOf(dimension.toUpperCase(Locale.ROOT)),
                BodyGroup.valueOf(group.toUpperCase(Locale.ROOT)), stature, mass == null ? OptionalDouble.empty() : OptionalDouble.of(mass));
        assertEquals(value, estimate.value(), HALF_OF_THE_LAST_PRINTED_DIGIT);
        assertEquals(halfWidth, estimate.halfWidth95(), HALF_OF_THE_LAST_PRINTED_DIGIT);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1408.9, 1829.1, 0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aStatureOutsideTheSurveyIsRefused(double stature) {
        assertThrows(OutsideSurvey.class,
                () -> ESTIMATES.estimate(BodyDimension.POPLITEAL_HEIGHT, BodyGroup.FEMALE, stature, OptionalDouble.empty()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1409, 1829})
    void theEdgesOfTheSurveyAreWithinIt(double stature) {
        assertTrue(ESTIMATES.estimate(BodyDimension.POPLITEAL_HEIGHT, BodyGroup.FEMALE, stature, OptionalDouble.empty()).value() > 300);
    }

    @ParameterizedTest
    @ValueSource(doubles = {35.7, 119.7, Double.NaN})
    void aMassOutsideTheSurveyIsRefused(double mass) {
        assertThrows(OutsideSurvey.class,
                () -> ESTIMATES.estimate(BodyDimension.THIGH_CLEARANCE, BodyGroup.FEMALE, 1630, OptionalDouble.of(mass)));
    }

    @Test
    void aTypedMeasureIsAskedAgainOutsideTheStatedBand() {
        BodyEstimate estimate = ESTIMATES.estimate(BodyDimension.POPLITEAL_HEIGHT, BodyGroup.MALE, 1760, OptionalDouble.empty());
        Band plausible = ESTIMATES.plausible(BodyMeasure.POPLITEAL_HEIGHT, BodyGroup.MALE, 1760).orElseThrow();
        // 431.0 ± (2.6 × 13.3104 + 30) = 431.0 ± 64.6
        assertEquals(64.6, plausible.high() - estimate.value(), 0.05);
        assertEquals(64.6, estimate.value() - plausible.low(), 0.05);
        assertTrue(ESTIMATES.plausible(BodyMeasure.STANDING_ELBOW_HEIGHT, BodyGroup.MALE, 1760).isEmpty());
        assertTrue(ESTIMATES.plausible(BodyMeasure.POPLITEAL_HEIGHT, BodyGroup.MALE, 2100).isEmpty());
    }
}
