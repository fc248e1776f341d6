package org.steadwork.workplace.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingsTest {

    @Test
    void theMedianOfThreeStands() {
        Measurement taken = Readings.of(2, 241, 236, 260);
        assertEquals(241, taken.value());
        assertEquals(0.6698 * 24 / 1.693, taken.standardError(), 1e-9);
        assertEquals(How.MEASURED, taken.how());
    }

    @Test
    void readingsThatAgreeAreNoSurerThanCarefulReadingAllows() {
        assertEquals(0.6698 * 2, Readings.of(2, 240, 240, 240).standardError(), 1e-9);
        assertEquals(2, Readings.of(2, 240).standardError(), 1e-9);
    }

    /** Source: simulation; 200,000 sets of normal readings with an SD of 1. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5})
    void theErrorIsThatOfTheMedianOfNormalReadings(int readings) {
        Random random = new Random(4);
        double squares = 0;
        double errors = 0;
        int sets = 200_000;
        for (int i = 0; i < sets; i++) {
            double[] read = random.doubles(readings).map(ignored -> random.nextGaussian()).toArray();
            Measurement taken = Readings.of(0, read);
            squares += taken.value() * taken.value() / sets;
            errors += taken.standardError() / sets;
        }
        assertEquals(Math.sqrt(squares), errors, 0.006);
    }

    @Test
    void noReadingsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Readings.of(2));
        assertThrows(IllegalArgumentException.class, () -> Readings.of(2, 1, 2, 3, 4, 5, 6));
        assertThrows(IllegalArgumentException.class, () -> Readings.of(2, 240, Double.NaN, 250));
        assertThrows(IllegalArgumentException.class, () -> Readings.of(Double.NaN, 240));
    }
}
