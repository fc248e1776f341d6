package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.Instant;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseOpened;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.VisitChanged;
import org.steadwork.casefile.VisitKind;
import org.steadwork.casefile.Visits;

/**
 * Keeps the diary true to the record, in the transaction that changes the record. A visit cancelled, or moved to another day, in the
 * case gives its time up; then, if it is still planned, it is to be booked.
 */
@ApplicationScoped
class VisitsKept {

    @Inject
    Appointments appointments;

    @Inject
    TakenSlots taken;

    @Inject
    Visits visits;

    @Inject
    CurrentAccount account;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    void changed(@Observes VisitChanged change) {
        Visit visit = change.visit();
        Appointment appointment = appointments.ofVisit(visit.id()).orElse(null);
        if (appointment == null) {
            return;
        }
        boolean cancelled = visit.attendance() == Attendance.CANCELLED || visit.attendance() == Attendance.LATE_CANCELLED;
        if (!cancelled && appointment.cancelledAt() != null) {
            appointment.cancelled(null, null);
        }
        if (appointment.live() && (cancelled || !visit.visitedOn().equals(appointment.day()))) {
            db.persist(new AppointmentChange(appointment, Act.GIVEN_UP, account.displayName(), Instant.now(clock)));
            appointment.giveUp();
            taken.release(appointment);
        }
    }

    /** What was booked before the case was opened belongs to it from now on: the first visit of the day, or a visit still to come. */
    void opened(@Observes CaseOpened opened) {
        CaseFile file = opened.caseFile();
        boolean firstBooked = false;
        for (Appointment appointment : appointments.withoutCase(file.patient().id())) {
            if (!firstBooked && appointment.day().equals(opened.first().visitedOn())) {
                appointment.belongTo(opened.first());
                firstBooked = true;
            } else if (appointment.toCome() && appointment.day().isAfter(file.openedOn())) {
                appointment.belongTo(visits.add(file, appointment.day(), VisitKind.FOLLOW_UP, Attendance.PLANNED));
            }
        }
        db.createQuery("update WaitingEntry w set w.caseFile = ?1 where w.patient = ?2 and w.caseFile is null and w.endedAt is null")
                .setParameter(1, file).setParameter(2, file.patient()).executeUpdate();
    }
}
