package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import org.steadwork.account.Account;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;
import org.steadwork.diary.rules.Spans;
import org.steadwork.web.Dates;

/** Judges whether a time can be booked: within the hours, not in leave, with nobody there twice. What is judged free may be gone when it is taken. */
@ApplicationScoped
class Places {

    @Inject
    Availability availability;

    @Inject
    TakenSlots taken;

    @Inject
    Clock clock;

    /**
     * Returns the place, with a room chosen where any will do.
     *
     * @param except the appointment that moves, or null
     */
    Place judged(long clinicianId, Wish.RoomWish where, LocalDate day, int start, int minutes, long patientId, Long except) {
        Span span = span(day, start, minutes);
        Openings openings = availability.between(day, day);
        Account clinician = openings.clinicians().stream().filter(one -> one.id() == clinicianId).findFirst()
                .orElseThrow(() -> new Refused("clinician", "Choose one of the clinicians offered.", false));
        hours(openings, clinician, day, span);
        if (taken.anyTaken("clinician", clinicianId, day, start, minutes, except)) {
            throw new Refused("start", clinician.displayName() + " has somebody else at " + shown(span) + ".", true);
        }
        if (taken.anyTaken("patient", patientId, day, start, minutes, except)) {
            throw new Refused("start", "This patient is booked elsewhere at " + shown(span) + ".", true);
        }
        return new Place(clinician, room(openings, where, day, span, except), day, start, minutes);
    }

    private Span span(LocalDate day, int start, int minutes) {
        if (day.isBefore(LocalDate.now(clock))) {
            throw new Refused("day", "A visit cannot be booked in the past. Today is " + Dates.shown(LocalDate.now(clock)) + ".", false);
        }
        if (start + minutes > Span.DAY) {
            throw new Refused("start", "This visit would end after midnight.", false);
        }
        if (!ClinicTime.exists(day, start, clock.getZone())) {
            throw new Refused("start", "There is no " + ClinicTime.shown(start) + " on " + Dates.shown(day) + ": the clocks go forward.", false);
        }
        return new Span(start, start + minutes);
    }

    private static void hours(Openings openings, Account clinician, LocalDate day, Span span) {
        if (Spans.hold(openings.work(clinician.id(), day), span)) {
            return;
        }
        Leave away = openings.away(clinician.id(), day).stream().filter(leave -> leave.span().overlaps(span)).findFirst().orElse(null);
        if (away != null) {
            throw new Refused("day", (away.clinic() ? "The clinic is closed" : clinician.displayName() + " is away") + " on " + Dates.shownWithDay(day) + ", "
                    + away.times() + ": " + away.words() + ".", false);
        }
        String hours = WeekColumn.shown(openings.usual(clinician.id(), day));
        throw new Refused("start", shown(span) + " lies outside the hours of " + clinician.displayName() + " on " + Dates.shownWithDay(day) + ": "
                + (hours.isEmpty() ? "none" : hours) + ".", false);
    }

    private ClinicRoom room(Openings openings, Wish.RoomWish where, LocalDate day, Span span, Long except) {
        if (where.any()) {
            if (openings.rooms().isEmpty()) {
                return null;
            }
            return openings.rooms().stream().filter(room -> !taken.anyTaken("room", room.id(), day, span.from(), span.minutes(), except)).findFirst()
                    .orElseThrow(() -> new Refused("room", "No room is free at " + shown(span) + ".", true));
        }
        if (where.roomId() == null) {
            return null;
        }
        ClinicRoom room = openings.rooms().stream().filter(one -> one.id().equals(where.roomId())).findFirst()
                .orElseThrow(() -> new Refused("room", "Choose one of the rooms offered.", false));
        if (taken.anyTaken("room", room.id(), day, span.from(), span.minutes(), except)) {
            throw new Refused("room", room.name() + " is taken at " + shown(span) + ".", true);
        }
        return room;
    }

    private static String shown(Span span) {
        return ClinicTime.shown(span.from()) + " to " + ClinicTime.shown(span.to());
    }
}
