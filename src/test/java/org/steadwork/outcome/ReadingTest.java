package org.steadwork.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.steadwork.outcome.scoring.ChangeReading;
import org.steadwork.outcome.scoring.ChangeVerdict;
import org.steadwork.outcome.scoring.Instrument;
import org.steadwork.outcome.scoring.PercentChange;
import org.steadwork.outcome.scoring.RatingAgreement;
import org.steadwork.outcome.scoring.Remeasure;
import org.steadwork.outcome.scoring.Series;
import org.steadwork.outcome.scoring.Threshold;

class ReadingTest {

    private static final Map<String, Instrument> INSTRUMENTS = InstrumentContent.read();
    private static final LocalDate START = LocalDate.of(2026, 3, 2);
    private static final ChangeReading.Beside TWO_WEEKS = new ChangeReading.Beside(2, false, OptionalDouble.empty());

    // the published course ODI 62, 50, 40, 38 in weeks 0, 2, 4, 6: slope -4.5 a week (SciPy 1.17, tag C)
    @Test
    void aCourseIsReadWhole() {
        ChangeReading reading = ChangeReading.of(series("odi21a", 62, 50, 40, 38), "low_back", TWO_WEEKS);
        assertEquals(ChangeVerdict.Kind.IMPORTANT, reading.sinceFirst().kind());
        assertEquals(ChangeVerdict.Kind.NO_REAL_CHANGE, reading.sinceLast().kind());
        assertEquals(-4.5, reading.trend().orElseThrow().slope(), 1e-9);
        assertEquals(100.0 * 24 / 62, reading.percent().value().getAsDouble(), 1e-9);
        assertEquals(List.of(8.0, 10.0, 12.0, 18.6), reading.importances().stream().map(threshold -> threshold.points(62)).toList());
        assertEquals(4, reading.reached());
        assertFalse(reading.plateau().reached());
        assertFalse(reading.worse());
        // 10.5 points at 4.5 a week are 2.33 weeks, 16.3 days: the seventeenth day
        assertEquals(START.plusWeeks(6).plusDays(17), reading.remeasureFrom().orElseThrow());
    }

    // at an expected 4 points a week an error of 10 needs 2.5 weeks ("about 3", C)
    @Test
    void measuringAgainTooSoonTellsNothing() {
        assertEquals(Optional.of(START.plusDays(18)), Remeasure.from(START, 10, 4));
        assertEquals(Optional.of(START.plusDays(18)), Remeasure.from(START, 10, -4));
        assertEquals(Optional.of(START.plusDays(14)), Remeasure.from(START, 2, 1), "a whole number of days is not rounded up further");
        assertTrue(Remeasure.from(START, 10, 0).isEmpty());
        assertTrue(Remeasure.from(START, 10, 0.01).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> Remeasure.from(START, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> Remeasure.from(START, 1, Double.NaN));
        ChangeReading.Beside expected = new ChangeReading.Beside(2, false, OptionalDouble.of(4));
        assertEquals(START.plusWeeks(2).plusDays(19), ChangeReading.of(series("odi21a", 62, 58), "low_back", expected).remeasureFrom().orElseThrow());
        assertTrue(ChangeReading.of(series("odi21a", 62, 58), "low_back", TWO_WEEKS).remeasureFrom().isEmpty(), "two scores have no pace");
    }

    // MDC90 9.4 is 1.645 x sqrt(2) x SEM, so SEM 4.04 and the index of -22 points is -3.85
    @Test
    void reliableChangeTakesTheErrorOfTheInstrument() {
        assertEquals(-3.850, ChangeReading.of(series("ndi", 38, 16), "neck", TWO_WEEKS).reliableChange().getAsDouble(), 0.0005);
        assertTrue(ChangeReading.of(series("mskhq", 30, 39), "knee", TWO_WEEKS).reliableChange().isEmpty(), "it does not say how the error was made");
    }

    // ODI error is from memory; the important amounts of 10 and 12 points are not
    @Test
    void aFigureFromMemoryAloneRaisesNoAlert() {
        assertTrue(ChangeVerdict.of(INSTRUMENTS.get("odi21a"), "low_back", 46, 58).alerts());
        assertEquals(ChangeVerdict.Kind.WORSE, ChangeVerdict.of(INSTRUMENTS.get("psfs"), "low_back", 5, 3).kind());
        assertTrue(ChangeVerdict.of(INSTRUMENTS.get("psfs"), "low_back", 5, 2.9).alerts(), "also past the 1.3 of Abbott and Schmitt");
        Instrument spadi = INSTRUMENTS.get("spadi");
        assertTrue(ChangeVerdict.of(spadi, "shoulder", 40, 60).alerts(), "past the error computed from a published one");
        Instrument remembered = onlyFromMemory(spadi);
        assertEquals(ChangeVerdict.Kind.WORSE, ChangeVerdict.of(remembered, "shoulder", 40, 60).kind(), "it is still shown as worse");
        assertFalse(ChangeVerdict.of(remembered, "shoulder", 40, 60).alerts());
        ChangeReading.Beside later = new ChangeReading.Beside(2, false, OptionalDouble.empty());
        assertTrue(ChangeReading.of(series(spadi, 60, 41, 42, 41), "shoulder", later).plateau().alerts());
        assertTrue(ChangeReading.of(series(remembered, 60, 41, 42, 41), "shoulder", later).plateau().reached());
        assertFalse(ChangeReading.of(series(remembered, 60, 41, 42, 41), "shoulder", later).plateau().alerts());
    }

    @Test
    void theRegionsOwnAmountComesFirst() {
        Instrument nprs = INSTRUMENTS.get("nprs_worst");
        assertEquals("Cleland et al., Arch Phys Med Rehabil 2008;89:69", nprs.importance("neck", 6).orElseThrow().source());
        assertEquals("Farrar et al., Pain 2001;94:149", nprs.importance("knee", 6).orElseThrow().source());
    }

    @Test
    void versionsAndUnitsNeverMix() {
        Instrument ndi = INSTRUMENTS.get("ndi");
        Series.Point first = new Series.Point(START, 38, "1991", "%", false);
        assertThrows(IllegalArgumentException.class, () -> new Series(ndi, List.of(first, new Series.Point(START.plusDays(1), 30, "2008", "%", false))));
        assertThrows(IllegalArgumentException.class, () -> new Series(ndi, List.of(first, new Series.Point(START.plusDays(1), 15, "1991", "points", false))));
        assertThrows(IllegalArgumentException.class, () -> new Series(ndi, List.of(first, new Series.Point(START, 30, "1991", "%", false))));
        assertThrows(IllegalArgumentException.class, () -> new Series(ndi, List.of(new Series.Point(START, Double.NaN, "1991", "%", false))));
        assertThrows(IllegalArgumentException.class, () -> ChangeReading.of(new Series(ndi, List.of(first)), "neck", TWO_WEEKS));
        Map<String, Series> parted = Series.byVersion(ndi, List.of(new Series.Point(START.plusDays(9), 30, "2008", "%", false), first,
                new Series.Point(START.plusDays(7), 36, "1991", "%", false)));
        assertEquals(List.of("2008", "1991"), List.copyOf(parted.keySet()));
        assertEquals(2, parted.get("1991").points().size());
    }

    @Test
    void percentHasNoMeaningOnEveryScale() {
        assertTrue(PercentChange.of(INSTRUMENTS.get("bctq_sss"), 3, 2).value().isEmpty(), "the scale begins at 1");
        assertTrue(PercentChange.of(INSTRUMENTS.get("rmdq24"), 3, 1).caution().contains("no room to show improvement"));
        assertTrue(PercentChange.of(INSTRUMENTS.get("lefs"), 80, 70).caution().contains("no room to show improvement"));
        assertTrue(PercentChange.of(INSTRUMENTS.get("ndi"), 0, 10).value().isEmpty());
        assertTrue(PercentChange.of(INSTRUMENTS.get("ndi"), 0, 10).caution().contains("undefined"));
        assertEquals(30, PercentChange.of(INSTRUMENTS.get("odi21a"), 40, 28).value().getAsDouble(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> PercentChange.of(INSTRUMENTS.get("odi21a"), 101, 28));
    }

    @Test
    void aRatingThatSaysSomethingElseIsAPromptToTalk() {
        Instrument groc = INSTRUMENTS.get("groc15");
        ChangeVerdict better = ChangeVerdict.of(INSTRUMENTS.get("odi21a"), "low_back", 46, 30);
        ChangeVerdict same = ChangeVerdict.of(INSTRUMENTS.get("odi21a"), "low_back", 46, 42);
        ChangeVerdict worse = ChangeVerdict.of(INSTRUMENTS.get("odi21a"), "low_back", 46, 60);
        assertFalse(RatingAgreement.of(better, groc, 5).disagrees());
        assertFalse(RatingAgreement.of(same, groc, 1).disagrees());
        assertFalse(RatingAgreement.of(worse, groc, -3).disagrees());
        assertEquals("The scores say no change, the person says better (+5): talk about it.", RatingAgreement.of(same, groc, 5).prompt());
        assertEquals("The scores say better, the person says no change (0): talk about it.", RatingAgreement.of(better, groc, 0).prompt());
        assertTrue(RatingAgreement.of(worse, groc, 2).disagrees());
        assertFalse(RatingAgreement.of(ChangeVerdict.of(INSTRUMENTS.get("was"), "", 4, 8), groc, -5).disagrees(), "no threshold, no judgement");
        assertThrows(IllegalArgumentException.class, () -> RatingAgreement.of(better, INSTRUMENTS.get("was"), 5));
        assertThrows(IllegalArgumentException.class, () -> RatingAgreement.of(better, INSTRUMENTS.get("groc11"), 6));
    }

    private static Instrument onlyFromMemory(Instrument i) {
        List<Threshold> kept = i.thresholds().stream().filter(Threshold::fromMemory).toList();
        return new Instrument(i.key(), i.name(), i.label(), i.version(), i.unit(), i.regions(), i.items(), i.rule(), i.direction(), i.lowest(), i.highest(),
                i.use(), i.decimals(), i.form(), i.changeRating(), i.bands(), kept, i.cannotImproveBelow(), i.cannotWorsenAbove(), i.everyDays(),
                i.scheduleWords(), i.permission(), i.source(), i.loinc(), i.notes(), i.onPhone());
    }

    private static Series series(String key, double... values) {
        return series(INSTRUMENTS.get(key), values);
    }

    private static Series series(Instrument instrument, double... values) {
        List<Series.Point> points = new ArrayList<>();
        for (double value : values) {
            points.add(new Series.Point(START.plusWeeks(2L * points.size()), value, instrument.version(), instrument.unit(), false));
        }
        return new Series(instrument, points);
    }
}
