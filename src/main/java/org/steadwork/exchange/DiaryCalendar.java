package org.steadwork.exchange;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.UUID;
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
import org.steadwork.diary.BookedVisits;

/**
 * Writes the visits of a clinician as an iCalendar file, in local times of the clinic's zone. A title holds the kind of visit and the
 * file number; no name and nothing clinical leaves with it. Source: RFC 5545.
 */
final class DiaryCalendar {

    private DiaryCalendar() {
    }

    static Calendar of(List<BookedVisits.Booked> visits, ZoneId zone, Instant now) {
        Calendar calendar = new Calendar();
        calendar.add(new ProdId("-//Steadwork//Diary//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        if (!zone.normalized().equals(ZoneOffset.UTC)) {
            calendar.add(TimeZoneRegistryFactory.getInstance().createRegistry().getTimeZone(zone.getId()).getVTimeZone());
        }
        visits.forEach(visit -> calendar.add(event(visit, zone, now)));
        return calendar;
    }

    private static VEvent event(BookedVisits.Booked visit, ZoneId zone, Instant now) {
        ZonedDateTime start = ZonedDateTime.of(visit.day(), LocalTime.MIDNIGHT.plusMinutes(visit.start()), zone);
        VEvent event = new VEvent(start, Duration.ofMinutes(visit.minutes()), visit.kind().label() + ", " + visit.patient().fileNumber());
        event.replace(new DtStamp(now));
        event.replace(new Uid(UUID.nameUUIDFromBytes(("appointment/" + visit.id()).getBytes(StandardCharsets.US_ASCII)).toString()));
        event.add(new Sequence(visit.version()));
        if (!visit.room().isEmpty()) {
            event.add(new Location(visit.room()));
        }
        return event;
    }
}
