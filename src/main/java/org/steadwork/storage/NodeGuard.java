package org.steadwork.storage;

import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.Config;
import org.flywaydb.core.api.FlywayException;
import org.jboss.logging.Logger;
import org.steadwork.kernel.RefusedStartException;

/**
 * Keeps the nodes on one PostgreSQL database in order: they start one after the other, and the schema moves on only while no other node
 * runs. Both are advisory locks of one connection that lives as long as the process, so a process that dies holds nothing.
 */
@ApplicationScoped
public class NodeGuard {

    private static final Logger LOG = Logger.getLogger("steadwork");
    /** Held while a node starts, by one. */
    private static final long STARTING = 0x737465616477_01L;
    /** Held while a node runs, by all of them together; alone by whoever changes the schema or fills the database. */
    private static final long RUNNING = 0x737465616477_02L;
    private static final int LAST_OF_THE_START = 1_000_000;

    // the process is one node: it has this from before the server starts until it ends
    private static Connection held;

    /** Waits for its turn to start and brings the schema up to this program's version, without the timeouts that pages are held to. */
    static void begin(DatabasePlace place, Config config) throws SQLException {
        Migrations migrations = Migrations.carried();
        Connection db = place.open();
        awaitTurn(db, place, config.getOptionalValue("steadwork.postgresql.start-wait-seconds", Integer.class).orElse(600));
        Optional<String> version = SchemaVersion.of(db);
        if (version.isEmpty() || SchemaVersion.compare(version.get(), migrations.last()) < 0) {
            requireAlone(db, place);
            migrate(migrations, place);
            ask(db, "select pg_advisory_unlock(?)", RUNNING);
        }
        if (!ask(db, "select pg_try_advisory_lock_shared(?)", RUNNING)) {
            throw new RefusedStartException("The database " + place + " is being filled by another program. Start again when that has ended. Nothing was changed.");
        }
        held = db;
    }

    private static void migrate(Migrations migrations, DatabasePlace place) {
        try {
            migrations.migrate(place.url(), place.user(), place.password(), migrations.last());
        } catch (FlywayException e) {
            throw new RefusedStartException("The database " + place + " could not be brought to this version: " + e.getMessage().strip()
                    + "\nEach step is stored whole or not at all; start again when the reason is mended.", e);
        }
    }

    private static void awaitTurn(Connection db, DatabasePlace place, int seconds) throws SQLException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
        boolean said = false;
        while (!ask(db, "select pg_try_advisory_lock(?)", STARTING)) {
            if (!said) {
                LOG.infof("Another node is starting on %s; this one waits for it.", place);
                said = true;
            }
            if (System.nanoTime() > end) {
                throw new RefusedStartException("Another node has been starting on " + place + " for " + seconds + " seconds. End it, or look at its log. Nothing was changed.");
            }
            pause();
        }
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(200);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /**
     * Takes the database of a connection for itself until that connection closes.
     *
     * @throws RefusedStartException when a node runs on it
     */
    public static void requireAlone(Connection db, DatabasePlace place) throws SQLException {
        if (!ask(db, "select pg_try_advisory_lock(?)", RUNNING)) {
            throw new RefusedStartException("Steadwork is running on " + place + ". End every node first. Nothing was changed.");
        }
    }

    private static boolean ask(Connection db, String sql, long number) throws SQLException {
        try (PreparedStatement question = db.prepareStatement(sql)) {
            question.setLong(1, number);
            try (ResultSet answer = question.executeQuery()) {
                return answer.next() && answer.getBoolean(1);
            }
        }
    }

    /** Lets the next node start. */
    void started(@Observes @Priority(LAST_OF_THE_START) StartupEvent event) {
        if (held == null) {
            return;
        }
        try {
            ask(held, "select pg_advisory_unlock(?)", STARTING);
        } catch (SQLException e) {
            LOG.warnf("The database was lost while this node started (state %s); another may start now.", e.getSQLState());
        }
    }
}
