package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
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

    @Inject
    Clock clock;

    /**
     * One appointment that holds its time.
     *
     * @param visitId the visit it is for; null for somebody without a case
     * @param start   local minutes since midnight
     * @param room    blank when no room of the clinic is needed
     * @param state   how it stands, in words without clinical detail: not here yet, here since 10:31, seen, missed
     */
    public record Booked(long id, Long visitId, Patient patient, Account clinician, VisitKind kind, LocalDate day, int start, int minutes, String from, String to,
            String room, String state, String mark, int version) {
    }

    /** All of these days in the order of time. */
    public List<Booked> between(LocalDate first, LocalDate last) {
        return appointments.between(first, last).stream().filter(Appointment::live).map(one -> new Booked(one.id(), one.visit() == null ? null : one.visit().id(),
                one.patient(), one.clinician(), one.kind(), one.day(), one.start(), one.minutes(), one.from(), one.to(), one.room() == null ? "" : one.room().name(),
                DiaryWords.state(one, clock.getZone()), DiaryWords.mark(one), one.version())).toList();
    }
}
