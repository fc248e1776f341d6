package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.NotFoundException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import org.steadwork.account.AuditTrail;
import org.steadwork.account.CurrentAccount;
import org.steadwork.casefile.Attendance;
import org.steadwork.casefile.CaseFile;
import org.steadwork.casefile.CaseFiles;
import org.steadwork.casefile.Visit;
import org.steadwork.casefile.Visits;
import org.steadwork.people.Patient;
import org.steadwork.people.Patients;
import org.steadwork.web.Dates;

/**
 * Books and moves: appointment, visit, taken time, history and audit in one transaction each. A collision with somebody else's booking
 * ends the transaction; {@link BookingDesk} tries again or says so.
 */
@ApplicationScoped
class Bookings {

    @Inject
    Places places;

    @Inject
    Appointments appointments;

    @Inject
    TakenSlots taken;

    @Inject
    Patients patients;

    @Inject
    CaseFiles cases;

    @Inject
    Visits visits;

    @Inject
    AuditTrail audit;

    @Inject
    CurrentAccount account;

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    /** Books what is wanted; returns the appointment's number. */
    @Transactional
    long book(Wish wish) {
        Patient patient = patients.findByIdOptional(wish.patientId()).orElseThrow(NotFoundException::new);
        Place place = places.judged(wish.clinicianId(), wish.where(), wish.day(), wish.start(), wish.minutes(), wish.patientId(), null);
        Visit visit = visit(wish, patient);
        boolean madeVisit = visit != null && wish.visitId() == null;
        Appointment appointment = visit == null ? null : appointments.ofVisit(visit.id()).orElse(null);
        if (appointment == null) {
            appointment = new Appointment(patient, visit, place);
            appointments.persist(appointment);
        } else if (appointment.live()) {
            throw new Refused("start", "This visit was booked meanwhile: " + DiaryWords.place(appointment.place()) + ".", true);
        } else {
            appointment.stand(place);
        }
        db.flush();
        taken.take(appointment);
        db.persist(AppointmentChange.booking(appointment, madeVisit, account.displayName(), Instant.now(clock)));
        if (wish.waitingId() != null) {
            serve(wish, appointment);
        }
        audit.record("booked visit", patient.id(), wish.caseId(), DiaryWords.place(place));
        db.flush();
        return appointment.id();
    }

    private Visit visit(Wish wish, Patient patient) {
        if (wish.caseId() == null) {
            return null;
        }
        CaseFile file = cases.findByIdOptional(wish.caseId()).filter(one -> one.patient().id().equals(patient.id())).orElseThrow(NotFoundException::new);
        if (!file.open()) {
            throw new Refused("kind", "This case is closed.", false);
        }
        if (wish.visitId() == null) {
            return visits.add(file, wish.day(), wish.kind(), Attendance.PLANNED);
        }
        Visit visit = visits.findByIdOptional(wish.visitId()).filter(one -> one.caseFile().id().equals(file.id())).orElseThrow(NotFoundException::new);
        if (visit.attendance() != Attendance.PLANNED) {
            throw new Refused("start", "This visit is no longer planned: it is " + visit.attendance().label() + ".", false);
        }
        visit.moveTo(wish.day());
        visit.describe(wish.kind());
        return visit;
    }

    private void serve(Wish wish, Appointment appointment) {
        WaitingEntry entry = db.find(WaitingEntry.class, wish.waitingId());
        if (entry == null || !entry.patient().id().equals(wish.patientId())) {
            throw new NotFoundException();
        }
        if (entry.ended()) {
            throw new Refused("start", "This entry of the waiting list was served meanwhile.", true);
        }
        entry.serve(appointment, Instant.now(clock));
    }

    /** Moves an appointment to another time, room or clinician; its visit moves with it. */
    @Transactional
    void move(long id, int version, long clinicianId, Wish.RoomWish where, LocalDate day, int start, int minutes) {
        Appointment appointment = appointments.whole(id).orElseThrow(NotFoundException::new);
        appointment.requireVersion(version);
        if (!appointment.toCome()) {
            throw new Refused("act", "Only a visit still to come can be moved; this one is " + DiaryWords.state(appointment, clock.getZone()) + ".", false);
        }
        Place place = places.judged(clinicianId, where, day, start, minutes, appointment.patient().id(), id);
        if (appointment.visit() != null && day.isBefore(appointment.caseFile().openedOn())) {
            throw new Refused("day", "The case was opened on " + Dates.shown(appointment.caseFile().openedOn()) + ".", false);
        }
        db.persist(new AppointmentChange(appointment, Act.MOVED, account.displayName(), Instant.now(clock)));
        taken.release(appointment);
        appointment.stand(place);
        appointment.arrive(null);
        if (appointment.visit() != null) {
            appointment.visit().moveTo(day);
        }
        db.flush();
        taken.take(appointment);
        audit.record("moved visit", appointment.patient().id(), caseId(appointment), DiaryWords.place(place));
        db.flush();
    }

    static Long caseId(Appointment appointment) {
        return appointment.caseFile() == null ? null : appointment.caseFile().id();
    }
}
