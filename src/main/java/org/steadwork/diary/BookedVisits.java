package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import org.steadwork.account.Account;
import org.steadwork.casefile.VisitKind;
import org.steadwork.people.Patient;

/** The booked times of a day or more, for what is handed out of the diary, as calendar files. One query. */
@ApplicationScoped
public class BookedVisits {

    @Inject
    Appointments appointments;

    /**
     * One appointment that holds its time.
     *
     * @param start   local minutes since midnight
     * @param room    blank when no room of the clinic is needed
     */
    public record Booked(long id, Patient patient, Account clinician, VisitKind kind, LocalDate day, int start, int minutes, String room, int version) {
    }

    /** All of these days in the order of time. */
    public List<Booked> between(LocalDate first, LocalDate last) {
        return appointments.between(first, last).stream().filter(Appointment::live).map(one -> new Booked(one.id(), one.patient(), one.clinician(), one.kind(),
                one.day(), one.start(), one.minutes(), one.room() == null ? "" : one.room().name(), one.version())).toList();
    }
}
