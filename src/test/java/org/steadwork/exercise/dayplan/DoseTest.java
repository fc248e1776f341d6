package org.steadwork.exercise.dayplan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DoseTest {

    @ParameterizedTest
    @CsvSource({"3, 3, 3, 3", "10-15, 10, 15, 10 to 15", "0.5-1, 0.5, 1, 0.5 to 1", "'0,5 - 1', 0.5, 1, 0.5 to 1", "10 to 15, 10, 15, 10 to 15",
        "10–15, 10, 15, 10 to 15", "4-4, 4, 4, 4", "100, 100, 100, 100"})
    void readsNumbersAndRanges(String text, double low, double high, String shown) {
        Range range = Range.parse(text);
        assertEquals(Range.of(low, high), range);
        assertEquals(shown, range.shown());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "ten", "15-10", "-3", "3-", "1e3", "10-15-20", "99999", "NaN", "8-12 each"})
    void refusesWhatIsNoRange(String text) {
        assertThrows(IllegalArgumentException.class, () -> Range.parse(text));
    }

    @Test
    void readsBackWhatItWrites() {
        Random random = new Random(11);
        for (int i = 0; i < 1_000; i++) {
            double low = random.nextInt(4_000) / 4.0;
            Range range = Range.of(low, low + random.nextInt(400) / 4.0);
            assertEquals(range, Range.parse(range.toString()), range.toString());
            assertEquals(range, Range.parse(range.shown()), range.shown());
        }
    }

    @Test
    void aDoseNeedsRepetitionsOrMinutesAndItsDays() {
        assertEquals(List.of(Dose.Part.DAYS_A_WEEK, Dose.Part.REPETITIONS), parts(Dose.slips(null, null, 1, null, null, null, null, null)));
        assertEquals(List.of(Dose.Part.MINUTES), parts(Dose.slips(null, Range.of(5), 1, null, Range.of(5), null, null, Range.of(7))));
        assertEquals(List.of(Dose.Part.HOLD), parts(Dose.slips(Range.of(5), null, 1, null, Range.of(5), null, null, Range.of(7))));
    }

    @ParameterizedTest
    @CsvSource({"301, 10, 1, 3, HOLD", "5, 61, 1, 3, REPETITIONS", "5, 0, 1, 3, REPETITIONS", "5, 2.5, 1, 3, REPETITIONS", "5, 10, 11, 3, SETS", "5, 10, 1, 8, DAYS_A_WEEK"})
    void limitsCatchSlipsOfThePen(double hold, double repetitions, double sets, double days, Dose.Part part) {
        List<Dose.Slip> slips = Dose.slips(Range.of(hold), Range.of(repetitions), 1, Range.of(sets), null, null, null, Range.of(days));
        assertEquals(List.of(part), parts(slips));
        assertThrows(IllegalArgumentException.class, () -> new Dose(Range.of(hold), Range.of(repetitions), 1, Range.of(sets), null, null, null, Range.of(days)));
    }

    @Test
    void theEdgesOfTheLimitsStillPass() {
        assertTrue(Dose.slips(Range.of(300), Range.of(60), 4, Range.of(10), null, Range.of(24), Range.of(12), Range.of(7)).isEmpty());
        assertTrue(Dose.slips(Range.of(0), Range.of(1), 1, Range.of(1), null, Range.of(1), Range.of(.25), Range.of(1)).isEmpty());
        assertEquals(List.of(Dose.Part.TIMES_A_DAY, Dose.Part.EVERY_HOURS, Dose.Part.SIDES),
                parts(Dose.slips(Range.of(1), Range.of(1), 5, Range.of(1), null, Range.of(25), Range.of(.2), Range.of(1))));
    }

    @Test
    void saysTheDoseInWords() {
        assertEquals("5 to 10 times each side, hold for 3 seconds, every 2 hours at work",
                DoseWords.of(new Dose(Range.of(3), Range.of(5, 10), 2, Range.of(1), null, null, Range.of(2), Range.of(7)), "side"));
        assertEquals("8 to 12 times, hold for 1 second, 2 to 3 sets, once a day, 3 days a week",
                DoseWords.of(new Dose(Range.of(1), Range.of(8, 12), 1, Range.of(2, 3), null, Range.of(1), null, Range.of(3)), ""));
        assertEquals("5 to 10 minutes, every 30 to 60 minutes at work",
                DoseWords.of(new Dose(null, null, 1, null, Range.of(5, 10), null, Range.of(.5, 1), Range.of(7)), ""));
        assertEquals("10 times, twice a day, every day",
                DoseWords.of(new Dose(null, Range.of(10), 1, null, null, Range.of(2), null, Range.of(7)), ""));
    }

    private static List<Dose.Part> parts(List<Dose.Slip> slips) {
        return slips.stream().map(Dose.Slip::part).toList();
    }
}
