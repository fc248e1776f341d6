package org.steadwork.backup;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.steadwork.web.ClinicNotice;
import org.steadwork.web.Dates;

/**
 * Makes a backup when the last good one is older than {@code steadwork.backup.every-hours}. It looks every few minutes, not at an hour of the
 * day, since a clinic's computer is off at night; after a failure it tries again after an hour.
 */
@ApplicationScoped
class BackupSchedule implements ClinicNotice {

    static final Duration AFTER_FAILURE = Duration.ofHours(1);
    private static final String HREF = "/clinic/backup";

    @Inject
    Backups backups;

    @Inject
    BackupRuns runs;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.backup.every-hours")
    int everyHours;

    private volatile Instant triedAt = Instant.MIN;

    @Scheduled(every = "{steadwork.backup.look-every}", delayed = "1m", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void look() {
        Instant now = Instant.now(clock);
        if (on() && due(now) && now.isAfter(triedAt.plus(AFTER_FAILURE))) {
            triedAt = now;
            backups.begin(null);
        }
    }

    boolean on() {
        return everyHours > 0 && keySet();
    }

    int everyHours() {
        return everyHours;
    }

    private boolean due(Instant now) {
        return runs.lastKept().map(last -> !last.plus(Duration.ofHours(everyHours)).isAfter(now)).orElse(true);
    }

    /** A key that cannot be used is like none; the page says what is wrong with it. */
    private boolean keySet() {
        try {
            return backups.key().isPresent();
        } catch (RefusedBackupException e) {
            return false;
        }
    }

    @Override
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        if (!keySet()) {
            return List.of(new Line("No backups", "No backup key is set, so no backups are made.", HREF, "See what to do"));
        }
        runs.lastEnded().filter(run -> !run.kept()).ifPresent(run -> lines.add(new Line("The last backup failed", Dates.shown(run.beganAt()) + ": " + run.failure() + ".",
                HREF, "Make a backup now")));
        Optional<Instant> last = runs.lastKept();
        Instant late = Instant.now(clock).minus(Duration.ofHours(2L * Math.max(1, everyHours)));
        if (everyHours > 0 && lines.isEmpty() && last.isPresent() && last.get().isBefore(late)) {
            lines.add(new Line("The last backup is old", "It was made on " + Dates.shown(last.get()) + ".", HREF, "Make a backup now"));
        }
        return lines;
    }
}
