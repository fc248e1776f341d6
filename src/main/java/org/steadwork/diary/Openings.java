package org.steadwork.diary;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.steadwork.account.Account;
import org.steadwork.diary.rules.Span;
import org.steadwork.diary.rules.Spans;

/**
 * Who works when and what is taken, over some days; read once, asked often.
 *
 * @param appointments all of these days, cancelled ones too
 */
record Openings(LocalDate first, LocalDate last, List<Account> clinicians, List<ClinicRoom> rooms, Map<Long, WorkingWeek> weeks,
        Map<DayOfWeek, List<Span>> usualWeek, List<Leave> leaves, List<Appointment> appointments) {

    /** When a clinician works on a day, leave taken out. */
    List<Span> work(long clinicianId, LocalDate day) {
        return Spans.without(usual(clinicianId, day), leaves.stream().filter(leave -> leave.concerns(clinicianId, day)).map(Leave::span).toList());
    }

    /** When a clinician would work on a day by the usual week. */
    List<Span> usual(long clinicianId, LocalDate day) {
        WorkingWeek week = weeks.get(clinicianId);
        return (week == null ? usualWeek : week.spans()).getOrDefault(day.getDayOfWeek(), List.of());
    }

    List<Leave> away(long clinicianId, LocalDate day) {
        return leaves.stream().filter(leave -> leave.concerns(clinicianId, day)).toList();
    }

    /** When anybody works on a day. */
    List<Span> open(LocalDate day) {
        return Spans.joined(clinicians.stream().flatMap(one -> work(one.id(), day).stream()).toList());
    }

    boolean closed(LocalDate day) {
        return open(day).isEmpty();
    }

    List<Span> free(long clinicianId, LocalDate day) {
        return Spans.without(work(clinicianId, day), live(day).stream().filter(one -> one.clinician().id() == clinicianId).map(Appointment::span).toList());
    }

    List<Span> freeRoom(long roomId, LocalDate day) {
        return Spans.without(open(day), live(day).stream().filter(one -> one.room() != null && one.room().id() == roomId).map(Appointment::span).toList());
    }

    List<Span> busyPatient(long patientId, LocalDate day) {
        return live(day).stream().filter(one -> one.patient().id() == patientId).map(Appointment::span).toList();
    }

    /** When a patient can be seen by a clinician, in a free room where one is needed. */
    List<Span> fitting(long clinicianId, long patientId, boolean room, LocalDate day) {
        List<Span> free = Spans.without(free(clinicianId, day), busyPatient(patientId, day));
        return room && !rooms.isEmpty() ? Spans.common(free, anyRoom(day)) : free;
    }

    /** The days on which the clinic is open, so many before and after a day, the day itself with them if it is open. */
    List<LocalDate> workingDaysAround(LocalDate day, int around) {
        List<LocalDate> days = new ArrayList<>();
        if (!closed(day)) {
            days.add(day);
        }
        for (int way : new int[] {-1, 1}) {
            int found = 0;
            for (LocalDate one = day.plusDays(way); found < around && !one.isBefore(first) && !one.isAfter(last); one = one.plusDays(way)) {
                if (!closed(one)) {
                    days.add(one);
                    found++;
                }
            }
        }
        days.sort(Comparator.naturalOrder());
        return days;
    }

    List<Appointment> live(LocalDate day) {
        return appointments.stream().filter(one -> one.live() && one.day().equals(day)).toList();
    }

    private List<Span> anyRoom(LocalDate day) {
        return Spans.joined(rooms.stream().flatMap(room -> freeRoom(room.id(), day).stream()).toList());
    }
}
