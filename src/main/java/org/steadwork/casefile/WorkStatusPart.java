package org.steadwork.casefile;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.steadwork.web.Dates;

/** The work status in the rail: what holds today, until when, and the days lost. */
@ApplicationScoped
class WorkStatusPart implements CasePart {

    @Inject
    WorkStatuses statuses;

    @Inject
    Clock clock;

    @Override
    public List<Fact> facts(CaseFile file) {
        LocalDate today = LocalDate.now(clock);
        WorkHistory history = statuses.of(file.id());
        Optional<WorkStatus> now = history.on(today);
        long daysOff = history.daysOff(today);
        String lost = daysOff == 0 ? "" : daysOff + (daysOff == 1 ? " day lost" : " days lost");
        if (now.isEmpty()) {
            return List.of(new Fact(30, "Work status", "not entered", lost.isEmpty() ? null : lost, null));
        }
        WorkStatus status = now.get();
        String note = String.join("; ", List.of(status.details(), status.until() == null ? "" : "until " + Dates.shown(status.until()), lost)
                .stream().filter(part -> !part.isEmpty()).toList());
        return List.of(new Fact(30, "Work status", status.code().label(), note.isEmpty() ? null : note, null));
    }
}
