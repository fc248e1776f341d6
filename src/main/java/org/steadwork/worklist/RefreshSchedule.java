package org.steadwork.worklist;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;

/** Looks at all open cases every so often, so that the first to open Today does not wait, and what left is noted near the time it did. */
@ApplicationScoped
class RefreshSchedule {

    @Inject
    Refresh refresh;

    @Inject
    Clock clock;

    @Scheduled(identity = "today", every = "{steadwork.today.every}", delayed = "1m", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void look() {
        refresh.runWhole(LocalDate.now(clock));
    }
}
