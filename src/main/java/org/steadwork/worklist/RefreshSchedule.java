package org.steadwork.worklist;

import io.quarkus.runtime.configuration.DurationConverter;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.storage.WorkTurns;

/** Looks at all open cases every so often, so that the first to open Today does not wait, and what left is noted near the time it did. */
@ApplicationScoped
class RefreshSchedule {

    @Inject
    Refresh refresh;

    @Inject
    WorkTurns turns;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.today.every")
    String every;

    @Scheduled(identity = "today", every = "{steadwork.today.every}", delayed = "1m", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void look() {
        turns.take("today", mostOf(DurationConverter.parseDuration(every)), () -> refresh.runWhole(LocalDate.now(clock)));
    }

    /** A little less than the interval, so that the node that did it last is not a moment too early for the next. */
    private static Duration mostOf(Duration interval) {
        return interval.multipliedBy(3).dividedBy(4);
    }
}
