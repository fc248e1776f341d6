package org.steadwork.exchange;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Recur;
import net.fortuna.ical4j.model.TimeZoneRegistryFactory;
import net.fortuna.ical4j.model.WeekDay;
import net.fortuna.ical4j.model.WeekDayList;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.RRule;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import net.fortuna.ical4j.transform.recurrence.Frequency;
import org.steadwork.exercise.DayPlan;
import org.steadwork.exercise.DayPlanView;
import org.steadwork.exercise.dayplan.PlannedDay;

/**
 * Writes a day plan as an iCalendar file: one weekly event for each break and for exercises at home. Times are local times of the
 * clinic's zone, so a break at 10:00 stays at 10:00 when the clocks change. Nothing in it names the patient or a complaint.
 * Source: RFC 5545.
 */
final class DayPlanCalendar {

    private static final Duration AT_HOME = Duration.ofMinutes(15);

    private final DayPlanView view;
    private final DayPlan plan;
    private final ZoneId zone;
    private final LocalDate first;
    private final LocalDate last;

    /**
     * @param first day from which the plan holds
     * @param last  last day on which it holds, not before {@code first}
     */
    DayPlanCalendar(DayPlanView view, ZoneId zone, LocalDate first, LocalDate last) {
        this.view = view;
        this.plan = view.plan();
        this.zone = zone;
        this.first = first;
        this.last = last;
    }

    Calendar calendar() {
        Calendar calendar = new Calendar();
        calendar.add(new ProdId("-//Steadwork//Day plan//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        if (!zone.normalized().equals(ZoneOffset.UTC)) {
            calendar.add(TimeZoneRegistryFactory.getInstance().createRegistry().getTimeZone(zone.getId()).getVTimeZone());
        }
        events().forEach(calendar::add);
        return calendar;
    }

    private List<VEvent> events() {
        List<VEvent> events = new ArrayList<>();
        for (PlannedDay.Stop stop : view.day().stops()) {
            String exercises = view.exercises(stop);
            if (!stop.fixed() || !exercises.isEmpty()) {
                Duration length = Duration.ofMinutes(stop.fixed() ? Math.max(1, (long) Math.ceil(stop.seconds() / 60)) : stop.to() - stop.from());
                events.add(event(stop.from(), length, exercises.isEmpty() ? "Short break" : "Short break: " + exercises, "Short break"));
            }
        }
        String home = view.home().stream().map(DayPlanView.Home::name).collect(Collectors.joining(", "));
        if (!home.isEmpty()) {
            for (Integer at : new Integer[] {plan.morningAt(), plan.eveningAt()}) {
                if (at != null) {
                    events.add(event(at, AT_HOME, "Exercises at home: " + home, "Time for myself"));
                }
            }
        }
        return events;
    }

    private VEvent event(int minute, Duration length, String plain, String discreet) {
        LocalDate day = first;
        while (!plan.workDays().contains(day.getDayOfWeek())) {
            day = day.plusDays(1);
        }
        VEvent event = new VEvent(ZonedDateTime.of(day, LocalTime.MIDNIGHT.plusMinutes(minute), zone), length, plan.discreet() ? discreet : plain);
        event.replace(new DtStamp(plan.savedAt()));
        event.replace(new Uid(UUID.nameUUIDFromBytes((plan.mark() + "/" + minute).getBytes(StandardCharsets.US_ASCII)).toString()));
        event.add(new Sequence(plan.version()));
        event.add(new RRule<>(new Recur.Builder<ZonedDateTime>().frequency(Frequency.WEEKLY).dayList(days())
                .until(ZonedDateTime.of(last, LocalTime.of(23, 59, 59), zone).withZoneSameInstant(ZoneOffset.UTC)).build()));
        event.add(new Description("Stop if it hurts more than agreed, and tell your physiotherapist."));
        return event;
    }

    private WeekDayList days() {
        WeekDayList days = new WeekDayList();
        plan.workDays().stream().map(DayOfWeek::name).map(name -> WeekDay.getWeekDay(WeekDay.Day.valueOf(name.substring(0, 2)))).forEach(days::add);
        return days;
    }
}
