package org.steadwork.account;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.steadwork.account.trail.TrailEntry;
import org.steadwork.account.trail.TrailHead;

/**
 * Binds the entries of the audit trail into a chain, in order, shortly after they were stored. A chain written within each transaction would
 * make all that is read and saved in the clinic wait for one row, and two slow saves for one another; so an entry stands unsealed for about
 * a second, and what is done to it in that second leaves no trace. An entry that was stored when the process died is sealed at the next start.
 */
@ApplicationScoped
class AuditSealer {

    private static final Logger LOG = Logger.getLogger("steadwork");
    private static final int BATCH = 1000;
    /** How far back a quick look goes for entries of transactions that took long; the look at the start goes back to the first. */
    private static final long LOOK_BACK = 5000;
    /** Every so many rounds a look goes back to the first, should anything be left. */
    private static final int ROUNDS_TO_THOROUGH = 20;

    @Inject
    DataSource source;

    @Inject
    AuditStore store;

    @Inject
    AuditAnchor anchor;

    private final ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "audit-sealer");
        thread.setDaemon(true);
        return thread;
    });
    @ConfigProperty(name = "steadwork.audit.seal-every-seconds")
    int everySeconds;

    private volatile boolean news;
    private int rounds;

    /** Runs after the migrations and before the clinic is greeted. */
    void start(@Observes @Priority(50) StartupEvent event) {
        try {
            anchor.open(head());
            sealLeft();
        } catch (SQLException e) {
            LOG.errorf("The audit trail could not be sealed at the start: %s", e.getMessage());
        }
        timer.scheduleWithFixedDelay(this::round, everySeconds, everySeconds, TimeUnit.SECONDS);
    }

    void stop(@Observes ShutdownEvent event) {
        timer.shutdown();
        try {
            timer.awaitTermination(5, TimeUnit.SECONDS);
            sealNow();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (SQLException | RuntimeException e) {
            LOG.warnf("The last entries of the audit trail are sealed at the next start: %s", e.getMessage());
        }
    }

    /** Says that an entry is about to be stored. */
    void notice() {
        news = true;
    }

    /** Seals what is stored by now and returns where the chain ends. */
    TrailHead sealNow() throws SQLException {
        TrailHead head = sealLatest();
        return sealLeft() ? head() : head;
    }

    private TrailHead sealLatest() throws SQLException {
        return sealFrom(inTransaction(store::lastId) - LOOK_BACK);
    }

    /** Seals what a quick look did not find, from the first on; returns whether there was any. */
    private boolean sealLeft() throws SQLException {
        boolean left = inTransaction(store::waiting) > 0;
        if (left) {
            sealFrom(Long.MIN_VALUE);
        }
        return left;
    }

    private void round() {
        boolean thorough = ++rounds % ROUNDS_TO_THOROUGH == 0;
        if (!news && !thorough) {
            return;
        }
        news = false;
        try {
            sealLatest();
            if (thorough) {
                sealLeft();
            }
        } catch (SQLException | RuntimeException e) {
            news = true;
            LOG.warnf("The audit trail could not be sealed, it is tried again: %s", e.getMessage());
        }
    }

    private TrailHead head() throws SQLException {
        return inTransaction(store::lockedHead);
    }

    /** @param from the first number looked at */
    private synchronized TrailHead sealFrom(long from) throws SQLException {
        boolean more;
        TrailHead head;
        do {
            Round round = inTransaction(db -> {
                TrailHead before = store.lockedHead(db);
                List<TrailEntry> entries = store.unsealed(db, from, BATCH);
                return new Round(entries.isEmpty() ? before : store.seal(db, before, entries), entries.size());
            });
            head = round.head();
            more = round.sealed() == BATCH;
            if (round.sealed() > 0) {
                anchor.keep(head, place -> inTransaction(db -> store.hashAt(db, place)));
            }
        } while (more);
        return head;
    }

    private record Round(TrailHead head, int sealed) {
    }

    private interface Work<T> {
        T on(Connection db) throws SQLException;
    }

    private <T> T inTransaction(Work<T> work) throws SQLException {
        try {
            return QuarkusTransaction.requiringNew().call(() -> {
                try (Connection db = source.getConnection()) {
                    return work.on(db);
                }
            });
        } catch (RuntimeException e) {
            throw new SQLException(e.getMessage(), e);
        }
    }
}
