package org.steadwork.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.steadwork.account.Account;
import org.steadwork.account.Role;
import org.steadwork.casefile.VisitKind;
import org.steadwork.diary.BookedVisits;
import org.steadwork.people.Patient;

/** The calendar file of the diary, written out and read back by a parser of RFC 5545. */
class DiaryCalendarTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final Patient PATIENT = new Patient("SW-0042", "Åse", "Tverdal", LocalDate.of(1991, 11, 6), LocalDate.of(2031, 3, 1));
    private static final Account CLINICIAN = new Account("t", "Test Clinician", "T. Clinician", Role.CLINICIAN, Instant.EPOCH);

    private static BookedVisits.Booked visit(long id, LocalDate day) {
        return new BookedVisits.Booked(id, PATIENT, CLINICIAN, VisitKind.FOLLOW_UP, day, 600, 30, "Room 1", 3);
    }

    /** Source of the change: United Kingdom summer time begins on the last Sunday of March, in 2031 on the 30th (Summer Time Order 2002). */
    @Test
    void tenInTheMorningStaysTenAcrossAChangeOfTheClocksAndNobodyIsNamed() throws IOException, ParserException {
        String text = DiaryCalendar.of(List.of(visit(1, LocalDate.of(2031, 3, 29)), visit(2, LocalDate.of(2031, 3, 30))), LONDON, Instant.parse("2031-03-20T10:00:00Z")).toString();
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        assertFalse(calendar.validate().hasErrors(), () -> calendar.validate().toString());
        List<VEvent> events = calendar.getComponents(Component.VEVENT);
        assertEquals(List.of(Instant.parse("2031-03-29T10:00:00Z"), Instant.parse("2031-03-30T09:00:00Z")), events.stream()
                .map(event -> ((ZonedDateTime) event.getDateTimeStart().getDate()).toInstant()).toList());
        assertEquals("Review, SW-0042", events.get(0).getSummary().getValue());
        assertFalse(text.contains("Tverdal") || text.contains("Åse"), text);
    }
}
