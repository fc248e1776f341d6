package org.steadwork.workplace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.steadwork.workplace.fit.Band;
import org.steadwork.workplace.fit.Criterion;

class BandStripTest {

    private static final Criterion.Bands ELBOW = new Criterion.Bands(0, new Band(-30, 10), new Band(-60, 30));
    private static final Criterion.Bands RUN = new Criterion.Bands(Double.NaN, new Band(Double.NEGATIVE_INFINITY, 60),
            new Band(Double.NEGATIVE_INFINITY, 90));

    @Test
    void theMarkStandsInTheBandThatTheValueIsIn() {
        for (double value = -200; value <= 200; value += 5) {
            BandStrip strip = BandStrip.of(value, 0, ELBOW);
            double mark = number(strip.markX()) + 3.5;
            double from = number(strip.okX());
            double to = from + number(strip.okWidth());
            assertEquals(value >= -30 && value <= 10, mark >= from - 0.1 && mark <= to + 0.1, "value " + value);
            assertTrue(mark >= 4 && mark <= 188, "value " + value);
            assertNull(strip.errorFrom());
        }
    }

    @Test
    void anOpenBandReachesTheEndAndTheValueStandsOutsideIt() {
        BandStrip strip = BandStrip.of(140, 0, RUN);
        assertEquals(4.0, number(strip.okX()), 0.05);
        assertTrue(number(strip.okWidth()) > 20, "the band can be seen");
        assertTrue(number(strip.markX()) > number(strip.nearX()) + number(strip.nearWidth()));
    }

    @Test
    void whatIsNotKnownIsALineThroughTheBlock() {
        BandStrip strip = BandStrip.of(0, 50, ELBOW);
        double middle = number(strip.markX()) + 3.5;
        assertEquals(middle - number(strip.errorFrom()), number(strip.errorTo()) - middle, 0.11);
        assertTrue(number(strip.errorFrom()) < number(strip.okX()));
    }

    private static double number(String x) {
        return Double.parseDouble(x);
    }
}
