package org.steadwork.caseload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steadwork.casefile.WorkStatusCode;

/** The parts of a case's sum, worked by hand. */
class CaseSummaryTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 1", "4, 4", "5, 4", "6, 4", "7, 5", "11, 9", "14, 10", "-1, refused"})
    void workingDaysFromAMonday(int days, String expected) {
        if (expected.equals("refused")) {
            assertThrows(IllegalArgumentException.class, () -> WorkingDays.between(MONDAY, MONDAY.plusDays(days)));
        } else {
            assertEquals(Integer.parseInt(expected), WorkingDays.between(MONDAY, MONDAY.plusDays(days)));
        }
    }

    @ParameterizedTest
    @CsvSource({"4, 7, 1", "4, 6, 0", "5, 7, 1", "5, 6, 0", "6, 13, 5"})
    void workingDaysFromTheEndOfAWeek(int from, int to, int expected) {
        assertEquals(expected, WorkingDays.between(MONDAY.plusDays(from), MONDAY.plusDays(to)));
    }

    /** Type 2 of Hyndman and Fan; R 4.2: quantile(c(1,2,3,4,5,6,7,8,9,10), c(.25,.5,.75), type = 2) gives 3, 5.5, 8; of 1 to 5 it gives 2, 3, 4. */
    @Test
    void quantilesAreThoseOfR() {
        Quantiles ten = Quantiles.of(IntStream.rangeClosed(1, 10));
        assertEquals(List.of(3.0, 5.5, 8.0), List.of(ten.at(.25).orElseThrow(), ten.median().orElseThrow(), ten.at(.75).orElseThrow()));
        Quantiles five = Quantiles.of(IntStream.of(5, 3, 1, 4, 2));
        assertEquals(List.of(2.0, 3.0, 4.0), List.of(five.at(.25).orElseThrow(), five.median().orElseThrow(), five.at(.75).orElseThrow()));
        assertEquals(7.0, Quantiles.of(IntStream.of(7)).at(.25).orElseThrow());
        assertEquals(true, Quantiles.of(IntStream.empty()).median().isEmpty());
    }

    private static CaseFacts.Worked spell(int day, WorkStatusCode code) {
        return new CaseFacts.Worked(MONDAY.plusDays(day), null, code);
    }

    @Test
    void aReturnCountsWhenItLastsOrIsStillHeld() {
        // off 0 to 9, full for 20 days only, off again 30 to 39, then full
        WorkSummary work = WorkSummary.of(List.of(spell(0, WorkStatusCode.OFF), spell(10, WorkStatusCode.FULL), spell(30, WorkStatusCode.OFF),
                spell(40, WorkStatusCode.FULL)), MONDAY.plusDays(50), 28);
        assertEquals(MONDAY, work.offOn());
        assertEquals(MONDAY.plusDays(40), work.fullOn());
        assertNull(work.fullUntil());
        assertEquals(20, work.daysOff());
        // exactly 28 days last, 27 do not
        for (int days : new int[] {27, 28}) {
            WorkSummary short28 = WorkSummary.of(List.of(spell(0, WorkStatusCode.OFF), spell(10, WorkStatusCode.FULL), spell(10 + days, WorkStatusCode.MODIFIED)),
                    MONDAY.plusDays(60), 28);
            assertEquals(days == 28 ? MONDAY.plusDays(10) : null, short28.fullOn());
            assertEquals(WorkStatusCode.MODIFIED, short28.last());
        }
    }

    @Test
    void whatIsNotKnownIsNeitherOffNorBack() {
        assertNull(WorkSummary.of(List.of(), MONDAY, 28).daysOff());
        WorkSummary unknown = WorkSummary.of(List.of(spell(0, WorkStatusCode.UNKNOWN), spell(5, WorkStatusCode.OFF_OTHER)), MONDAY.plusDays(9), 28);
        assertNull(unknown.offOn());
        assertNull(unknown.first());
        assertEquals(0, unknown.daysOff());
        // off without an end is counted to the last contact and no further
        assertEquals(8, WorkSummary.of(List.of(spell(0, WorkStatusCode.OFF)), MONDAY.plusDays(7), 28).daysOff());
        // an end of its own before the next spell: the days between are unknown
        WorkSummary gap = WorkSummary.of(List.of(new CaseFacts.Worked(MONDAY, MONDAY.plusDays(4), WorkStatusCode.OFF), spell(20, WorkStatusCode.FULL)), MONDAY.plusDays(60), 28);
        assertEquals(5, gap.daysOff());
        assertEquals(MONDAY.plusDays(20), gap.fullOn());
    }

    @Test
    void zonesRatedTwiceAreComparedByWhetherALinkWasConfirmed() {
        TreeMap<LocalDate, List<CaseFacts.Reported>> reports = new TreeMap<>(Map.of(
                MONDAY, List.of(reported("neck", 8), reported("shoulder_r", 6), reported("low_back", 4), reported("knee_l", null)),
                MONDAY.plusDays(14), List.of(reported("neck", 3), reported("low_back", 5), reported("knee_l", 2))));
        // the shoulder is no longer marked, the knee was not rated at first: neither is compared
        assertEquals(new ZonePain(8.0, 3.0, 4.0, 5.0), ZonePain.of(reports, Set.of("neck", "shoulder_r")));
        assertEquals(new ZonePain(null, null, 6.0, 4.0), ZonePain.of(reports, Set.of()));
        reports.put(MONDAY.plusDays(20), List.of(new CaseFacts.Reported(MONDAY.plusDays(20), true, null, null)));
        assertEquals(new ZonePain(7.0, 0.0, 4.0, 0.0), ZonePain.of(reports, Set.of("neck", "shoulder_r")));
        assertEquals(new ZonePain(null, null, null, null), ZonePain.of(new TreeMap<>(reports.headMap(MONDAY, true)), Set.of()));
    }

    private static CaseFacts.Reported reported(String zone, Integer worst) {
        return new CaseFacts.Reported(MONDAY, false, zone, worst);
    }

    @Test
    void findingsAreReadAsTheyAreWritten() {
        assertEquals(Map.of("CH-1", '+', "CH-1b", '!', "SC-10", ' '), WorkplaceFigures.findings("CH-1+ CH-1b! SC-10"));
        assertEquals(Map.of(), WorkplaceFigures.findings(""));
        assertEquals(Map.of(), WorkplaceFigures.findings(null));
    }
}
