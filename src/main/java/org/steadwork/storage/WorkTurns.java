package org.steadwork.storage;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * Lets one node at a time do a piece of work. Who is at it holds a row, by the clock of the database, and prolongs its turn while the work
 * lasts; when its node dies the turn ends by itself after {@code steadwork.work-turn-seconds}. A node that stood still for longer than
 * that may find its turn given away, so what is done in turns must do no harm when it is done twice.
 */
@ApplicationScoped
public class WorkTurns {

    private static final Logger LOG = Logger.getLogger("steadwork");
    private static final int TIMES_PROLONGED_IN_A_TURN = 4;
    private static final String SECONDS_FROM_NOW = "current_timestamp + cast(? as integer) * interval '1' second";
    private static final String TAKE = "update work_turn set holder = ?, held_until = " + SECONDS_FROM_NOW + ", begun_at = current_timestamp where work = ?"
            + " and (held_until is null or held_until <= current_timestamp)"
            + " and (last_done_at is null or last_done_at <= current_timestamp - cast(? as integer) * interval '1' second)";
    private static final String BEGIN = "insert into work_turn (work, holder, held_until, begun_at) values (?, ?, " + SECONDS_FROM_NOW + ", current_timestamp)"
            + " on conflict do nothing";

    @Inject
    DataSource source;

    @ConfigProperty(name = "steadwork.work-turn-seconds")
    int seconds;

    private final String node = ProcessHandle.current().pid() + "-" + UUID.randomUUID();

    private final ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "work-turns");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * Runs a task when no node is at this work, and none that did it to its end began less than a given time ago.
     *
     * @param work   its name, at most 40 letters
     * @param within nodes that look at the same interval do it once, when this is a good part of the interval; zero for at any time
     * @return whether it ran here
     */
    public boolean take(String work, Duration within, Runnable task) {
        String holder = node + "-" + UUID.randomUUID();
        if (!taken(work, holder, within)) {
            return false;
        }
        long pause = Math.max(1, TimeUnit.SECONDS.toMillis(seconds) / TIMES_PROLONGED_IN_A_TURN);
        ScheduledFuture<?> prolonging = timer.scheduleAtFixedRate(() -> prolong(work, holder), pause, pause, TimeUnit.MILLISECONDS);
        boolean done = false;
        try {
            task.run();
            done = true;
        } finally {
            prolonging.cancel(false);
            end(work, holder, done);
        }
        return true;
    }

    private boolean taken(String work, String holder, Duration within) {
        return change(TAKE, holder, seconds, work, (int) within.toSeconds()) == 1 || change(BEGIN, work, holder, seconds) == 1;
    }

    private void prolong(String work, String holder) {
        try {
            if (change("update work_turn set held_until = " + SECONDS_FROM_NOW + " where work = ? and holder = ?", seconds, work, holder) == 0) {
                LOG.warnf("This node’s turn at '%s' was given to another, since it did not show itself in time.", work);
            }
        } catch (RuntimeException e) {
            LOG.warnf("This node’s turn at '%s' could not be prolonged, it is tried again: %s", work, e.getMessage());
        }
    }

    /** Work that failed may be tried again by any node at once. */
    private void end(String work, String holder, boolean done) {
        try {
            change("update work_turn set held_until = null" + (done ? ", last_done_at = begun_at" : "") + " where work = ? and holder = ?", work, holder);
        } catch (RuntimeException e) {
            LOG.warnf("This node’s turn at '%s' could not be ended, it ends by itself: %s", work, e.getMessage());
        }
    }

    /** Since when a node is at this work, by the database's clock. */
    public Optional<Instant> heldSince(String work) {
        return on(db -> {
            try (PreparedStatement query = db.prepareStatement("select begun_at from work_turn where work = ? and held_until > current_timestamp")) {
                query.setString(1, work);
                try (ResultSet row = query.executeQuery()) {
                    return row.next() ? Optional.of(row.getObject(1, OffsetDateTime.class).toInstant()) : Optional.empty();
                }
            }
        });
    }

    private int change(String sql, Object... values) {
        return on(db -> {
            try (PreparedStatement statement = db.prepareStatement(sql)) {
                for (int i = 0; i < values.length; i++) {
                    statement.setObject(i + 1, values[i]);
                }
                return statement.executeUpdate();
            }
        });
    }

    private interface Work<T> {
        T on(Connection db) throws SQLException;
    }

    /** In a transaction of its own, so that others see the turn before the work is done. */
    private <T> T on(Work<T> work) {
        return QuarkusTransaction.requiringNew().call(() -> {
            try (Connection db = source.getConnection()) {
                return work.on(db);
            }
        });
    }

    @PreDestroy
    void stop() {
        timer.shutdown();
    }
}
