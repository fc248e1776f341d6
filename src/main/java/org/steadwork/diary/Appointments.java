package org.steadwork.diary;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.casefile.Attendance;

/** The appointments of the clinic, each with what a page shows of it in the same query. */
@ApplicationScoped
class Appointments implements PanacheRepository<Appointment> {

    private static final String WHOLE = "from Appointment a join fetch a.patient left join fetch a.visit v left join fetch v.caseFile"
            + " join fetch a.clinician left join fetch a.room ";

    /** All appointments of some days, cancelled ones too, in the order of time. */
    List<Appointment> between(LocalDate first, LocalDate last) {
        return list(WHOLE + "where a.day between ?1 and ?2 order by a.day, a.start, a.id", first, last);
    }

    Optional<Appointment> whole(long id) {
        return find(WHOLE + "where a.id = ?1", id).firstResultOptional();
    }

    /** As {@link #whole}, read again from the database after a transaction of its own changed it. */
    Optional<Appointment> afresh(long id) {
        getEntityManager().clear();
        return whole(id);
    }

    Optional<Appointment> ofVisit(long visitId) {
        return find(WHOLE + "where v.id = ?1", visitId).firstResultOptional();
    }

    List<Appointment> ofPatient(long patientId) {
        return list(WHOLE + "where a.patient.id = ?1 order by a.day desc, a.start desc", patientId);
    }

    /** Live appointments of a case from a day on. */
    List<Appointment> toCome(long caseId, LocalDate from) {
        return list(WHOLE + "where v.caseFile.id = ?1 and a.live = true and a.day >= ?2 and v.attendance = ?3 order by a.day, a.start", caseId, from,
                Attendance.PLANNED);
    }

    /** Appointments of patients who have no case yet, still planned. */
    List<Appointment> withoutCase(long patientId) {
        return list(WHOLE + "where a.patient.id = ?1 and a.visit is null and a.firstAttendance <> ?2 and a.firstAttendance <> ?3 order by a.day, a.start",
                patientId, Attendance.CANCELLED, Attendance.LATE_CANCELLED);
    }

    List<AppointmentChange> changes(long appointmentId) {
        return getEntityManager().createQuery("from AppointmentChange c join fetch c.wasClinician left join fetch c.wasRoom where c.appointment.id = ?1"
                + " order by c.id desc", AppointmentChange.class).setParameter(1, appointmentId).getResultList();
    }
}
