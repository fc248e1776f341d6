package org.steadwork.backup;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;
import org.steadwork.account.trail.TrailHead;
import org.steadwork.storage.DatabasePlace;
import org.steadwork.kernel.RefusedStartException;
import org.steadwork.tables.Snapshot;

/** The command {@code backup FILE}: one sealed file of everything, read back before it gets its name. */
public final class BackupCommand {

    private BackupCommand() {
    }

    public static int run(Config config, List<String> words, PrintStream out) {
        if (words.size() != 1) {
            throw new RefusedStartException("backup takes one file: backup clinic.backup");
        }
        Path file = Path.of(words.get(0));
        BackupKey key = RestoreCommand.key(config);
        DatabasePlace place = DatabasePlace.from(config);
        if (place.h2File() && !Files.exists(place.file())) {
            throw new RefusedStartException("There is no clinic at " + place + ".");
        }
        Optional<TrailHead> trailEnd = TrailEnd.kept(config);
        try (Connection db = place.open(); Snapshot snapshot = Snapshot.take(db)) {
            BackupHead head = SafeFile.write(snapshot, trailEnd, key, Clock.systemUTC().instant(), file);
            out.printf(Locale.ROOT, "%s holds %d rows of %d tables, schema %s; it was read back whole.%n", file, head.rows(), head.tables().size(), head.schema());
            return 0;
        } catch (SQLException | IOException e) {
            throw new RefusedStartException("The backup could not be made: " + e.getMessage(), e);
        }
    }
}
