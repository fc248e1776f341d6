package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.steadwork.account.Accounts;

/** Reads hours, leave, rooms and appointments of some days in five queries, however many there are. */
@ApplicationScoped
class Availability {

    @Inject
    EntityManager db;

    @Inject
    Accounts accounts;

    @Inject
    Appointments appointments;

    @Inject
    DiaryContent content;

    Openings between(LocalDate first, LocalDate last) {
        Map<Long, WorkingWeek> weeks = db.createQuery("from WorkingWeek w join fetch w.account", WorkingWeek.class).getResultList().stream()
                .collect(Collectors.toMap(week -> week.account().id(), Function.identity()));
        List<Leave> leaves = db.createQuery("from Leave l left join fetch l.account where l.lastOn >= ?1 and l.firstOn <= ?2 order by l.firstOn, l.id",
                Leave.class).setParameter(1, first).setParameter(2, last).getResultList();
        return new Openings(first, last, accounts.clinicians(), roomsInUse(), weeks, content.usualWeek(), leaves, appointments.between(first, last));
    }

    List<ClinicRoom> roomsInUse() {
        return db.createQuery("from ClinicRoom where inUse = true order by name", ClinicRoom.class).getResultList();
    }

    List<ClinicRoom> allRooms() {
        return db.createQuery("from ClinicRoom order by inUse desc, name", ClinicRoom.class).getResultList();
    }

    Optional<WorkingWeek> week(long clinicianId) {
        return db.createQuery("from WorkingWeek w join fetch w.account where w.account.id = ?1", WorkingWeek.class).setParameter(1, clinicianId)
                .getResultStream().findFirst();
    }
}
