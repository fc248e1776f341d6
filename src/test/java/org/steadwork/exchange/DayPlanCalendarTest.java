package org.steadwork.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Period;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.steadwork.exercise.DayPlan;
import org.steadwork.exercise.DayPlanView;
import org.steadwork.exercise.dayplan.DayFrame;
import org.steadwork.exercise.dayplan.DayPlanner;
import org.steadwork.exercise.dayplan.DeskExercise;
import org.steadwork.exercise.dayplan.FixedBlock;

/** The calendar file, written out and read back by a parser of RFC 5545. */
class DayPlanCalendarTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final LocalDate FRIDAY = LocalDate.of(2031, 3, 28);
    private static final LocalDate LAST = LocalDate.of(2031, 4, 11);
    private static final DayFrame FRAME = new DayFrame(9 * 60, 17 * 60, List.of(new FixedBlock(750, 780, FixedBlock.Kind.REST, "Lunch")), 60, 5, 5);
    private static final Set<DayOfWeek> DAYS = Set.of(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);

    private static String written(boolean discreet, ZoneId zone) {
        DayPlan plan = new DayPlan(null);
        plan.lay(FRAME, DAYS, 7 * 60, null, discreet, "T. Okoro-Vale", Instant.parse("2031-03-27T10:00:00Z"));
        DayPlanView view = new DayPlanView(plan, DayPlanner.plan(FRAME, List.of(new DeskExercise("1", 120, 60))), Map.of("1", "Neck turns, left"),
                List.of(new DayPlanView.Home("Wall press-up", "10 times")));
        return new DayPlanCalendar(view, zone, FRIDAY, LAST).calendar().toString();
    }

    private static Calendar read(String text) throws IOException, ParserException {
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        assertFalse(calendar.validate().hasErrors(), () -> calendar.validate().toString());
        return calendar;
    }

    @Test
    void aBreakStaysAtItsHourWhenTheClocksChange() throws IOException, ParserException {
        // Source: in the United Kingdom summer time begins on the last Sunday of March, in 2031 on the 30th (Summer Time Order 2002)
        Calendar calendar = read(written(true, LONDON));
        List<VEvent> events = calendar.getComponents(Component.VEVENT);
        assertEquals(8, events.size(), "seven breaks and the exercises before work");
        for (VEvent event : events) {
            Period<ZonedDateTime> period = new Period<>(FRIDAY.atStartOfDay(LONDON), LAST.plusDays(30).atStartOfDay(LONDON));
            List<ZonedDateTime> starts = event.calculateRecurrenceSet(period).stream().map(p -> ZonedDateTime.from(p.getStart())).sorted().toList();
            assertEquals(List.of(FRIDAY, FRIDAY.plusDays(3), FRIDAY.plusDays(7), FRIDAY.plusDays(10), LAST), starts.stream().map(ZonedDateTime::toLocalDate).toList(),
                    "Fridays and Mondays to the last day");
            Set<LocalTime> hours = starts.stream().map(ZonedDateTime::toLocalTime).collect(Collectors.toSet());
            assertEquals(1, hours.size(), () -> "one hour of the day, whatever the clocks do: " + hours);
            assertEquals(0, starts.get(0).getOffset().getTotalSeconds());
            assertEquals(3600, starts.get(1).getOffset().getTotalSeconds());
        }
        assertFalse(calendar.getComponents(Component.VTIMEZONE).isEmpty(), "the zone travels with the file");
    }

    @Test
    void aDiscreetCalendarNamesNoExercise() throws IOException, ParserException {
        String discreet = written(true, LONDON);
        read(discreet);
        assertFalse(discreet.contains("Neck"), discreet);
        assertFalse(discreet.contains("Wall press"), discreet);
        String plain = written(false, LONDON);
        read(plain);
        assertTrue(plain.contains("Short break: Neck turns\\, left"), plain);
        assertTrue(plain.contains("Exercises at home: Wall press-up"), plain);
    }

    @Test
    void theSamePlanKeepsItsEventsApart() throws IOException, ParserException {
        List<VEvent> events = read(written(true, LONDON)).getComponents(Component.VEVENT);
        assertEquals(events.size(), events.stream().map(e -> e.getUid().orElseThrow().getValue()).distinct().count());
    }

    @Test
    void aClinicOnUniversalTimeGetsUniversalTimes() throws IOException, ParserException {
        Calendar calendar = read(written(true, ZoneId.of("Etc/UTC")));
        VEvent first = (VEvent) calendar.getComponents(Component.VEVENT).get(0);
        assertEquals(0, OffsetDateTime.ofInstant(Instant.from(first.getDateTimeStart().getDate()), ZoneId.of("Z")).getOffset().getTotalSeconds());
    }
}
