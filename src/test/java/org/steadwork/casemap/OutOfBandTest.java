package org.steadwork.casemap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.steadwork.workplace.fit.Band;

class OutOfBandTest {

    // worked by hand for this project: green −30..10, amber −60..25
    private static final Band GREEN = new Band(-30, 10);
    private static final Band AMBER = new Band(-60, 25);

    @Test
    void oneStandsAtTheEdgeToOutOfRangeOnEitherSide() {
        assertEquals(1, OutOfBand.times(25, GREEN, AMBER), 1e-9);
        assertEquals(1, OutOfBand.times(-60, GREEN, AMBER), 1e-9);
        assertEquals(.5, OutOfBand.times(17.5, GREEN, AMBER), 1e-9);
        assertEquals(2, OutOfBand.times(-90, GREEN, AMBER), 1e-9);
        assertEquals(0, OutOfBand.times(10, GREEN, AMBER), 1e-9);
    }

    @Test
    void aBandWithoutAWidthGivesNoNumber() {
        assertFalse(Double.isFinite(OutOfBand.times(11, GREEN, new Band(-60, 10))));
    }
}
