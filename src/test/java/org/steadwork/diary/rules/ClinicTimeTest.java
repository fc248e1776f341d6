package org.steadwork.diary.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * Local times across a change of the clocks. Source of the changes: European Union directive 2000/84/EC, last Sunday of March and of
 * October at 01:00 UTC; in 2030 these are 31 March and 27 October. The moments below are counted by hand from it.
 */
class ClinicTimeTest {

    private static final ZoneId DUBLIN = ZoneId.of("Europe/Dublin");
    private static final LocalDate FORWARD = LocalDate.of(2030, 3, 31);
    private static final LocalDate BACK = LocalDate.of(2030, 10, 27);

    @Test
    void timesAreReadAsTheyAreTyped() {
        assertEquals(OptionalInt.of(570), ClinicTime.read(" 9:30 "));
        assertEquals(OptionalInt.of(570), ClinicTime.read("0930"));
        assertEquals(OptionalInt.of(570), ClinicTime.read("09.30"));
        assertEquals(OptionalInt.of(540), ClinicTime.read("9"));
        assertEquals(OptionalInt.of(1440), ClinicTime.read("24:00"));
        for (String wrong : new String[] {"", "24:01", "9:60", "25", "-1", "nine", "9:3", "99999", "12:00:00"}) {
            assertEquals(OptionalInt.empty(), ClinicTime.read(wrong), wrong);
        }
        assertEquals("09:05", ClinicTime.shown(545));
    }

    @Test
    void anHourThatTheClocksLeapOverDoesNotExist() {
        assertFalse(ClinicTime.exists(FORWARD, 90, DUBLIN));
        assertTrue(ClinicTime.exists(FORWARD, 59, DUBLIN));
        assertTrue(ClinicTime.exists(FORWARD, 120, DUBLIN));
        assertTrue(ClinicTime.exists(BACK, 90, DUBLIN));
    }

    @Test
    void tenInTheMorningStaysTenInTheMorning() {
        assertEquals(Instant.parse("2030-03-30T10:00:00Z"), ClinicTime.at(FORWARD.minusDays(1), 600, DUBLIN));
        assertEquals(Instant.parse("2030-03-31T09:00:00Z"), ClinicTime.at(FORWARD, 600, DUBLIN));
        assertEquals(Instant.parse("2030-10-27T10:00:00Z"), ClinicTime.at(BACK, 600, DUBLIN));
        assertEquals(Instant.parse("2030-10-27T00:30:00Z"), ClinicTime.at(BACK, 90, DUBLIN), "of a time that comes twice, the first");
    }

    @Test
    void noticeIsCountedInHoursThatPass() {
        Instant tenTheDayBefore = Instant.parse("2030-03-30T10:00:00Z");
        assertTrue(ClinicTime.shortNotice(FORWARD, 600, tenTheDayBefore, 24, DUBLIN), "the night is an hour shorter");
        assertFalse(ClinicTime.shortNotice(FORWARD, 600, tenTheDayBefore.minusSeconds(3600), 24, DUBLIN));
        assertFalse(ClinicTime.shortNotice(BACK, 600, Instant.parse("2030-10-26T09:59:00Z"), 24, DUBLIN), "the night is an hour longer");
        Instant plain = Instant.parse("2030-06-03T09:00:00Z");
        assertFalse(ClinicTime.shortNotice(LocalDate.of(2030, 6, 4), 600, plain, 24, DUBLIN), "24 hours to the minute are enough");
        assertTrue(ClinicTime.shortNotice(LocalDate.of(2030, 6, 4), 600, plain.plusSeconds(1), 24, DUBLIN));
    }

    @Test
    void remindersReachOverTheDaysOnWhichTheClinicIsClosed() {
        Instant friday = Instant.parse("2030-12-13T09:00:00Z");
        assertEquals(Instant.parse("2030-12-17T09:00:00Z"), ClinicTime.remindUntil(friday, 48, day -> day.getDayOfWeek().getValue() > 5, DUBLIN));
        assertEquals(Instant.parse("2030-12-12T09:00:00Z"), ClinicTime.remindUntil(Instant.parse("2030-12-10T09:00:00Z"), 48, day -> false, DUBLIN));
        assertEquals(Instant.parse("2030-12-15T09:00:00Z").plusSeconds(30L * 86_400), ClinicTime.remindUntil(friday, 48, day -> true, DUBLIN), "never endless");
    }
}
