package org.steadwork.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class HatchTest {

    /** A square of 20 by 20 whose sides are straight curves. */
    private final Hatch square = new Hatch("M0 0C5 0 15 0 20 0C20 5 20 15 20 20C15 20 5 20 0 20C0 15 0 5 0 0Z");

    @Test
    void levelLinesRunFromSideToSide() {
        assertEquals("M0 0L20 0M0 9L20 9M0 18L20 18", square.lines(0, 9));
    }

    @Test
    void slantedLinesEndOnTheOutline() {
        Matcher point = Pattern.compile("[ML](-?[0-9.]+) (-?[0-9.]+)").matcher(square.lines(-45, 5));
        int seen = 0;
        while (point.find()) {
            double x = Double.parseDouble(point.group(1));
            double y = Double.parseDouble(point.group(2));
            double beside = Math.min(Math.min(Math.abs(x), Math.abs(20 - x)), Math.min(Math.abs(y), Math.abs(20 - y)));
            assertEquals(0, beside, 0.06, x + " " + y);
            seen++;
        }
        assertTrue(seen >= 8, "two ends of each line, but only " + seen + " ends");
    }

    @Test
    void everyDotIsWhole() {
        Matcher dot = Pattern.compile("M(-?[0-9.]+) (-?[0-9.]+)a").matcher(square.dots(6, 2));
        int seen = 0;
        while (dot.find()) {
            double left = Double.parseDouble(dot.group(1));
            double y = Double.parseDouble(dot.group(2));
            assertTrue(left >= -0.06 && left + 4 <= 20.06 && y - 2 >= -0.06 && y + 2 <= 20.06, left + " " + y);
            seen++;
        }
        assertTrue(seen >= 3, "dots: " + seen);
    }
}
