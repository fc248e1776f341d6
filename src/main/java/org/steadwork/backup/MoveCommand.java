package org.steadwork.backup;

import java.io.PrintStream;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.microprofile.config.Config;
import org.flywaydb.core.api.FlywayException;
import org.steadwork.kernel.RefusedStartException;
import org.steadwork.storage.DatabasePlace;
import org.steadwork.storage.Migrations;
import org.steadwork.storage.NodeGuard;
import org.steadwork.storage.SchemaVersion;
import org.steadwork.tables.Sequences;
import org.steadwork.tables.Snapshot;

/**
 * The command {@code move-to-postgresql}: copies the clinic of the data folder, which must not be running, into an empty PostgreSQL database. All
 * rows go in by one transaction, which ends only when every table reads back the same; after a failure the database is as empty as before.
 * The file is only read.
 */
public final class MoveCommand {

    private MoveCommand() {
    }

    /** @throws RefusedStartException in words; nothing was moved then */
    public static int run(Config config, List<String> words, PrintStream out) {
        if (!words.isEmpty()) {
            throw new RefusedStartException("move-to-postgresql takes nothing else: it moves the clinic of steadwork.data-folder into the database of quarkus.datasource.jdbc.url.");
        }
        DatabasePlace to = DatabasePlace.from(config);
        if (!to.postgresql()) {
            throw new RefusedStartException("The clinic is moved by the Steadwork that is built for PostgreSQL: docs/scaling.md says how. Nothing was changed.");
        }
        DatabasePlace from = DatabasePlace.ofFile(config);
        if (!Files.exists(from.file())) {
            throw new RefusedStartException("There is no clinic at " + from + ". Set steadwork.data-folder to its folder. Nothing was changed.");
        }
        try (Connection source = from.open(); Snapshot snapshot = Snapshot.take(source); Connection target = to.open()) {
            OpenClinic clinic = new OpenClinic(snapshot, Clock.systemUTC().instant(), read -> out.printf(Locale.ROOT, "%d rows so far%n", read));
            requireKnown(clinic.head());
            NodeGuard.requireAlone(target, to);
            requireEmpty(target, to);
            move(clinic, Sequences.read(source), to, target);
            out.printf(Locale.ROOT, "%s holds the clinic now: %d rows of %d tables, each compared with %s.%nThat file is as it was: keep it as a last backup in another place, so that"
                    + " nobody goes on with it.%n", to, clinic.head().rows(), clinic.head().tables().size(), from);
            return 0;
        } catch (SQLException | RefusedBackupException | FlywayException e) {
            throw new RefusedStartException("The clinic could not be moved: " + e.getMessage().strip() + "\nThe file is as it was.", e);
        }
    }

    private static void requireKnown(BackupHead head) {
        if (SchemaVersion.compare(head.schema(), Migrations.carried().last()) > 0) {
            throw new RefusedStartException("The clinic was last used by a newer Steadwork (" + head.schema() + "). Move it with that one. Nothing was changed.");
        }
    }

    private static void requireEmpty(Connection target, DatabasePlace to) throws SQLException {
        if (!Contents.of(target).isEmpty()) {
            throw new RefusedStartException("The database " + to + " holds something already. A clinic is moved into an empty one only: make a new database, and name that."
                    + " Nothing was changed.");
        }
    }

    private static void move(OpenClinic clinic, Map<String, Long> sequences, DatabasePlace to, Connection target) throws SQLException {
        Migrations migrations = Migrations.carried();
        try {
            migrations.migrate(to.url(), to.user(), to.password(), clinic.head().schema());
            Restoring.into(target, clinic.head(), sequences, clinic);
        } catch (SQLException | RuntimeException e) {
            Contents.of(target).drop(target);
            throw e;
        }
        migrations.migrate(to.url(), to.user(), to.password(), migrations.last());
        try (Statement sql = target.createStatement()) {
            sql.execute("analyze"); // the server plans by what it knows of the tables, and knows nothing of new ones yet
        }
    }
}
