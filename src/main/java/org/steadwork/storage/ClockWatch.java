package org.steadwork.storage;

import io.quarkus.runtime.StartupEvent;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.steadwork.web.ClinicNotice;
import org.steadwork.web.Dates;

/**
 * Notices when the computer's clock stands before the latest entry of the audit trail: after an empty battery, say. Entries keep their order, which
 * comes from their numbers; their times would be wrong, so the log and the page Clinic say so until the clock is right.
 */
@ApplicationScoped
class ClockWatch implements ClinicNotice {

    /** Small steps back are what time servers do. */
    private static final Duration ALLOWED = Duration.ofMinutes(2);
    private static final Logger LOG = Logger.getLogger("steadwork");

    @Inject
    EntityManager db;

    @Inject
    Clock clock;

    /** The demo clinic's clock stands at the same moment at every start. */
    @ConfigProperty(name = "steadwork.demo")
    boolean demo;

    private final AtomicReference<Instant> latest = new AtomicReference<>(Instant.MIN);

    @Transactional
    void start(@Observes StartupEvent event) {
        Instant stored = db.createQuery("select max(e.happenedAt) from AuditEvent e", Instant.class).getSingleResult();
        if (stored != null) {
            latest.set(stored);
        }
        look();
    }

    @Scheduled(every = "1m", delayed = "1m")
    void look() {
        Instant now = Instant.now(clock);
        if (behind(now)) {
            LOG.warnf("This computer’s clock stands at %s, before the latest entry of %s. Set it right: what is entered now gets a wrong time.", now, latest.get());
        } else {
            latest.accumulateAndGet(now, (one, other) -> one.isAfter(other) ? one : other);
        }
    }

    private boolean behind(Instant now) {
        return !demo && now.plus(ALLOWED).isBefore(latest.get());
    }

    @Override
    public List<Line> lines() {
        return behind(Instant.now(clock)) ? List.of(new Line("This computer’s clock is wrong", "It stands before the latest entry, of "
                + Dates.shown(latest.get()) + ". What is entered now gets a wrong time. Set the clock right.", "/clinic", "Look again")) : List.of();
    }
}
