package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.NotFoundException;
import java.time.Clock;
import java.time.Instant;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.VisitNote;
import org.steadwork.casefile.VisitNotes;
import org.steadwork.diary.rules.ClinicTime;

/** What becomes of an appointment: arrived, seen, missed, cancelled; and Undo of the latest of these, or of a move or booking. */
@ApplicationScoped
class Attendances {

    @Inject
    Appointments appointments;

    @Inject
    TakenSlots taken;

    @Inject
    VisitNotes notes;

    @Inject
    DiaryContent content;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    @Transactional
    void mark(long id, int version, Act act) {
        Appointment appointment = open(id, version);
        Instant now = Instant.now(clock);
        if (act != Act.ARRIVED && ClinicTime.at(appointment.day(), appointment.start(), clock.getZone()).isAfter(now) && !sameDay(appointment, now)) {
            throw new Refused("act", "This visit lies in the future; it has not been " + act.label().toLowerCase() + " yet.", false);
        }
        if (act == Act.ARRIVED && !sameDay(appointment, now)) {
            throw new Refused("act", "Arriving is noted on the day of the visit.", false);
        }
        db.persist(new AppointmentChange(appointment, act, account.displayName(), now));
        switch (act) {
            case ARRIVED -> appointment.arrive(now);
            case SEEN -> appointment.attend(Attendance.ATTENDED);
            case MISSED -> appointment.attend(Attendance.MISSED);
            default -> throw new IllegalArgumentException(act + " is not noted like this");
        }
        bump(appointment);
        audit.record("set attendance", appointment.patient().id(), Bookings.caseId(appointment), act.label());
    }

    /** Calls an appointment off; the patient's short notice counts as cancelled late. The time is free at once. */
    @Transactional
    void cancel(long id, int version, CancelledBy by) {
        Appointment appointment = open(id, version);
        Instant now = Instant.now(clock);
        boolean late = by == CancelledBy.PATIENT
                && ClinicTime.shortNotice(appointment.day(), appointment.start(), now, content.lateCancelHours(), clock.getZone());
        db.persist(new AppointmentChange(appointment, Act.CANCELLED, account.displayName(), now));
        appointment.attend(late ? Attendance.LATE_CANCELLED : Attendance.CANCELLED);
        appointment.cancelled(by, now);
        appointment.giveUp();
        taken.release(appointment);
        bump(appointment);
        audit.record("cancelled visit", appointment.patient().id(), Bookings.caseId(appointment), by.label());
    }

    /** Takes the latest change back. Its time may have gone to somebody else; then it is refused. */
    @Transactional
    void undo(long id, int version) {
        Appointment appointment = appointments.whole(id).orElseThrow(NotFoundException::new);
        appointment.requireVersion(version);
        refuseSigned(appointment);
        AppointmentChange change = undoable(id);
        if (change == null) {
            throw new Refused("act", "There is nothing to undo.", false);
        }
        db.persist(new AppointmentChange(appointment, Act.UNDONE, account.displayName(), Instant.now(clock)));
        taken.release(appointment);
        if (change.act() == Act.BOOKED) {
            unbook(appointment, change);
        } else {
            restore(appointment, change);
        }
        change.undo();
        bump(appointment);
        audit.record("undid in the diary", appointment.patient().id(), Bookings.caseId(appointment), change.act().label());
        db.flush();
    }

    /** A booking taken back: a visit it made is cancelled by the clinic; one planned before is to be booked again. */
    private void unbook(Appointment appointment, AppointmentChange booked) {
        appointment.giveUp();
        if (booked.madeVisit() || appointment.visit() == null) {
            appointment.attend(Attendance.CANCELLED);
            appointment.cancelled(CancelledBy.CLINIC, Instant.now(clock));
        }
        db.createQuery("from WaitingEntry w where w.appointment = ?1", WaitingEntry.class).setParameter(1, appointment).getResultStream()
                .forEach(WaitingEntry::waitAgain);
    }

    private void restore(Appointment appointment, AppointmentChange change) {
        appointment.stand(change.wasPlace());
        if (appointment.visit() != null && change.act() == Act.MOVED) {
            appointment.visit().moveTo(change.wasPlace().day());
        }
        appointment.attend(change.wasAttendance());
        appointment.arrive(change.wasArrivedAt());
        appointment.cancelled(change.wasCancelledBy(), change.wasCancelledAt());
        if (!change.wasLive()) {
            appointment.giveUp();
        } else if (otherwiseTaken(appointment)) {
            throw new Refused("act", "This cannot be undone: the time was given to somebody else meanwhile. Book another.", true);
        }
        db.flush();
        if (appointment.live()) {
            taken.take(appointment);
        }
    }

    private boolean otherwiseTaken(Appointment appointment) {
        return taken.anyTaken("clinician", appointment.clinician().id(), appointment.day(), appointment.start(), appointment.minutes(), appointment.id())
                || taken.anyTaken("patient", appointment.patient().id(), appointment.day(), appointment.start(), appointment.minutes(), appointment.id())
                || appointment.room() != null && taken.anyTaken("room", appointment.room().id(), appointment.day(), appointment.start(),
                        appointment.minutes(), appointment.id());
    }

    /** The latest change that was not undone, or null. */
    AppointmentChange undoable(long id) {
        return appointments.changes(id).stream().filter(change -> !change.undone() && change.act() != Act.UNDONE && change.act() != Act.GIVEN_UP)
                .findFirst().orElse(null);
    }

    private Appointment open(long id, int version) {
        Appointment appointment = appointments.whole(id).orElseThrow(NotFoundException::new);
        appointment.requireVersion(version);
        refuseSigned(appointment);
        if (!appointment.toCome()) {
            throw new Refused("act", "This visit is " + DiaryWords.state(appointment, clock.getZone()) + " already. Undo that first.", false);
        }
        return appointment;
    }

    private void refuseSigned(Appointment appointment) {
        if (appointment.visit() != null && notes.of(appointment.visit()).filter(VisitNote::signed).isPresent()) {
            throw new Refused("act", "The note of this visit is signed; its attendance stays as it is.", false);
        }
    }

    /** The attendance stands with the visit; the appointment's version speaks for both. */
    private void bump(Appointment appointment) {
        db.lock(appointment, LockModeType.OPTIMISTIC_FORCE_INCREMENT);
        db.flush();
    }

    private boolean sameDay(Appointment appointment, Instant now) {
        return appointment.day().equals(now.atZone(clock.getZone()).toLocalDate());
    }
}
