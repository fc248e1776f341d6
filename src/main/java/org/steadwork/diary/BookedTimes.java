package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Map;
import org.steadwork.casefile.VisitTimes;

/** Tells Today at what time its visits are booked. */
@ApplicationScoped
class BookedTimes implements VisitTimes {

    @Inject
    Appointments appointments;

    @Override
    public Map<Long, LocalTime> on(LocalDate day) {
        Map<Long, LocalTime> times = new HashMap<>();
        appointments.between(day, day).stream().filter(one -> one.live() && one.visit() != null)
                .forEach(one -> times.put(one.visit().id(), LocalTime.ofSecondOfDay(one.start() * 60L)));
        return times;
    }
}
