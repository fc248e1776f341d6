package org.steadwork.exchange;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.TimeZoneRegistryFactory;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.steadwork.casefile.Visit;

/** Writes planned visits as an iCalendar file. No complaint and no name is in it: calendars are copied to places nobody chose. Source: RFC 5545. */
final class VisitCalendar {

    private final String mark;
    private final ZoneId zone;
    private final Instant now;
    private final Map<Long, VisitTimes.Span> times;

    /** @param mark of the clinic, so that the same visit is the same event in every file */
    VisitCalendar(String mark, ZoneId zone, Instant now, Map<Long, VisitTimes.Span> times) {
        this.mark = mark;
        this.zone = zone;
        this.now = now;
        this.times = times;
    }

    /**
     * @param title what an event is called
     * @param place where, or null
     */
    Calendar of(List<Visit> visits, Function<Visit, String> title, String place) {
        Calendar calendar = new Calendar();
        calendar.add(new ProdId("-//Steadwork//Visits//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        // there even when nothing is planned: a calendar has at least one component
        calendar.add(TimeZoneRegistryFactory.getInstance().createRegistry().getTimeZone(zone.normalized().equals(ZoneOffset.UTC) ? "Etc/UTC" : zone.getId()).getVTimeZone());
        visits.forEach(visit -> calendar.add(event(visit, title.apply(visit), place)));
        return calendar;
    }

    private VEvent event(Visit visit, String title, String place) {
        VisitTimes.Span span = times.get(visit.id());
        VEvent event = span == null ? new VEvent(visit.visitedOn(), title)
                : new VEvent(ZonedDateTime.of(visit.visitedOn(), span.from(), zone), Duration.ofMinutes(span.minutes()), title);
        event.replace(new DtStamp(now));
        event.replace(new Uid(UUID.nameUUIDFromBytes((mark + "/visit/" + visit.id()).getBytes(StandardCharsets.UTF_8)).toString()));
        event.add(new Sequence(visit.version()));
        if (place != null) {
            event.add(new Location(place));
        }
        return event;
    }
}
