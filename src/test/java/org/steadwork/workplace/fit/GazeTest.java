package org.steadwork.workplace.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class GazeTest {

    @ParameterizedTest
    @CsvFileSource(resources = "visual-angle.csv", numLinesToSkip = 2)
    void charactersAreSeenUnderTheTabulatedAngles(String kind, double distance, double in, double out) {
        if (kind.equals("height")) {
            assertEquals(out, Gaze.characterHeight(in, distance), 0.005 + 1e-9);
        } else {
            assertEquals(out, Gaze.minutesOfArc(in, distance), 0.05 + 1e-9);
        }
    }

    /** Source: worked by hand, cases 6 (laptop) and 9 (two screens 530 wide at 700). */
    @Test
    void anglesOfTheWorkedCases() {
        assertEquals(39.0, Gaze.belowHorizontal(405, 500), 0.05);
        assertEquals(10.9, Gaze.belowHorizontal(115, 600), 0.05);
        assertEquals(19.7, Gaze.belowHorizontal(1225 - 975, 700), 0.05);
        assertEquals(20.7, Gaze.aside(265, 700), 0.05);
        assertEquals(37.1, Gaze.aside(530, 700), 0.05);
        assertEquals(490, Gaze.offset(700, 35), 0.5);
    }

    @Test
    void whatIsNotALengthIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Gaze.belowHorizontal(10, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Gaze.belowHorizontal(10, 0));
        assertThrows(IllegalArgumentException.class, () -> Gaze.minutesOfArc(Double.NaN, 500));
        assertThrows(IllegalArgumentException.class, () -> Gaze.offset(700, 90));
        assertThrows(IllegalArgumentException.class, () -> Gaze.characterHeight(Double.NaN, 500));
    }
}
