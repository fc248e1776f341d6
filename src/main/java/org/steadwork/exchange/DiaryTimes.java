package org.steadwork.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.steadwork.casefile.Visit;

/** The times of visits that are booked in the diary. */
@ApplicationScoped
class DiaryTimes implements VisitTimes {

    private record Booked(Long visit, int start, int minutes) {
    }

    @Inject
    EntityManager db;

    @Override
    public Map<Long, Span> of(List<Visit> visits) {
        Map<Long, Span> times = new HashMap<>();
        if (!visits.isEmpty()) {
            db.createQuery("select a.visit.id, a.start, a.minutes from Appointment a where a.live = true and a.visit in ?1", Booked.class).setParameter(1, visits)
                    .getResultStream().forEach(one -> times.put(one.visit(), new Span(LocalTime.ofSecondOfDay(one.start() * 60L), one.minutes())));
        }
        return times;
    }
}
