package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steadwork.account.Account;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitKind;
import org.steadwork.diary.rules.ClinicTime;
import org.steadwork.diary.rules.Span;
import org.steadwork.people.Patient;

/** Takes over a diary that was kept elsewhere, as the demo clinic's: what is past too. The database holds it to the law of no overlap all the same. */
@ApplicationScoped
public class DiaryImport {

    @Inject
    EntityManager db;

    @Inject
    TakenSlots taken;

    @Inject
    DiaryContent content;

    /** A time as written. */
    public record Time(LocalDate day, String start, Account clinician, String room) {
    }

    public void room(String name) {
        db.persist(new ClinicRoom(name));
    }

    /** @param hours for each group of days the hours as typed */
    public void hours(Account clinician, Map<DayOfWeek, String> hours) {
        Map<DayOfWeek, List<Span>> week = new EnumMap<>(DayOfWeek.class);
        hours.forEach((day, typed) -> week.put(day, WeekColumn.read(typed)));
        db.persist(new WorkingWeek(clinician, week));
    }

    /** @param from null for whole days */
    public void leave(Account clinician, LocalDate first, LocalDate last, String from, String to, String words) {
        db.persist(new Leave(clinician, first, last, from == null ? null : new Span(minute(from), minute(to)), words));
    }

    /**
     * Books without judging hours or the past.
     *
     * @param visit null for somebody without a case, whose attendance is then {@code attendance}
     */
    public void book(Patient patient, Visit visit, VisitKind kind, Time time, Attendance attendance, Instant arrivedAt, String by, Instant at) {
        ClinicRoom room = time.room() == null ? null : db.createQuery("from ClinicRoom where name = ?1", ClinicRoom.class).setParameter(1, time.room()).getSingleResult();
        Appointment appointment = new Appointment(patient, visit, new Place(time.clinician(), room, time.day(), minute(time.start()), content.length(kind).minutes()));
        db.persist(appointment);
        db.persist(AppointmentChange.booking(appointment, false, by, at));
        if (visit == null && attendance != Attendance.PLANNED) {
            Act act = attendance == Attendance.MISSED ? Act.MISSED : attendance == Attendance.ATTENDED ? Act.SEEN : Act.CANCELLED;
            db.persist(new AppointmentChange(appointment, act, by, at));
            appointment.attend(attendance);
        }
        if (appointment.cancelled()) {
            appointment.cancelled(CancelledBy.PATIENT, at);
            appointment.giveUp();
        } else {
            appointment.arrive(arrivedAt);
            db.flush();
            taken.take(appointment);
        }
    }

    /** @param times keys of the parts of the day */
    public void waiting(Patient patient, CaseFile caseFile, VisitKind kind, Account clinician, LocalDate earliest, LocalDate latest, List<String> times, String priority,
            LocalDate since, String by) {
        WaitingEntry entry = new WaitingEntry(patient, caseFile, since, by);
        entry.want(kind, clinician, earliest, latest, times, WaitingEntry.Priority.valueOf(priority.toUpperCase()));
        db.persist(entry);
    }

    /** Notes a try to reach the patient after the latest missed appointment without a case. */
    public void contact(Patient patient, Instant at, String route, String outcome, String by) {
        Appointment missed = db.createQuery("from Appointment a where a.patient = ?1 and a.firstAttendance = ?2 order by a.day desc", Appointment.class)
                .setParameter(1, patient).setParameter(2, Attendance.MISSED).setMaxResults(1).getSingleResult();
        db.persist(new ContactAttempt(null, missed, at, route, outcome, null, by));
    }

    private static int minute(String time) {
        return ClinicTime.read(time).orElseThrow(() -> new IllegalArgumentException("Not a time: " + time));
    }
}
