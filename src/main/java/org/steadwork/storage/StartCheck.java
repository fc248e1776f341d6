package org.steadwork.storage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;
import org.steadwork.kernel.RefusedStartException;

/** Looks at the data folder and the database before the server starts, so that what is wrong is said in one line and nothing starts by half. */
public final class StartCheck {

    private static final String PLAIN = "H:";
    private static final String SEALED = "H2encrypt\n";
    private static final long MEGABYTE = 1024 * 1024;

    private StartCheck() {
    }

    /**
     * Checks and hands the key to what follows.
     *
     * @throws RefusedStartException when the clinic must not start
     */
    public static void run(Config config) {
        DatabasePlace place = DatabasePlace.from(config);
        try {
            checked(place, config).close();
        } catch (SQLException e) {
            throw Troubles.opening(place, e);
        }
        place.hand(config);
    }

    /** As {@link #run}, and leaves an H2 file open for the server, unless closing it is worth while because much of it is unused. */
    public static void runForServer(Config config) {
        DatabasePlace place = DatabasePlace.from(config);
        try {
            Connection db = checked(place, config);
            if (place.h2File() && !FileFill.of(db).wasteful()) {
                OpenedFile.keep(db);
            } else {
                db.close();
            }
        } catch (SQLException e) {
            throw Troubles.opening(place, e);
        }
        place.hand(config);
    }

    private static Connection checked(DatabasePlace place, Config config) throws SQLException {
        if (place.h2File()) {
            folder(place.folder(), config.getOptionalValue("steadwork.least-free-megabytes", Long.class).orElse(20L));
            file(place);
            removeTrace(place.trace());
        }
        Connection db = place.open();
        try {
            if (place.postgresql()) {
                NodeGuard.begin(place, config);
            }
            Optional<String> version = SchemaVersion.of(db);
            String last = Migrations.carried().last();
            if (version.isPresent() && SchemaVersion.compare(version.get(), last) > 0) {
                throw new RefusedStartException("The database " + place + " was last used by a newer Steadwork (" + version.get() + ", this one knows " + last
                        + "). Start that one; an older program could store things wrongly. Nothing was changed.");
            }
            return db;
        } catch (SQLException | RuntimeException e) {
            db.close();
            throw e;
        }
    }

    private static void folder(Path folder, long leastFree) {
        try {
            Files.createDirectories(folder);
            long free = Files.getFileStore(folder).getUsableSpace() / MEGABYTE;
            if (free < leastFree) {
                throw new RefusedStartException("The disk of " + folder + " has " + free + " MB left; at least " + leastFree
                        + " are needed to work safely. Make room and start again. Nothing was changed.");
            }
            Path trial = Files.createTempFile(folder, "trial", ".tmp");
            Files.delete(trial);
        } catch (FileSystemException e) {
            throw new RefusedStartException("The data folder " + folder.toAbsolutePath() + " cannot be written to (" + reason(e)
                    + "). Give this user the right to write there, or name another with -Dsteadwork.data-folder. Nothing was changed.", e);
        } catch (IOException e) {
            throw new RefusedStartException("The data folder " + folder.toAbsolutePath() + " cannot be used: " + e.getMessage() + ". Nothing was changed.", e);
        }
    }

    /** A file of refused statements that an earlier version let H2 keep may hold what stands in records. */
    private static void removeTrace(Path trace) {
        try {
            Files.deleteIfExists(trace);
        } catch (IOException e) {
            throw new RefusedStartException("The file " + trace + " may hold parts of records and cannot be removed. Remove it by hand and start again.", e);
        }
    }

    private static String reason(FileSystemException e) {
        return e.getReason() != null ? e.getReason() : e.getClass().getSimpleName().replaceAll("Exception$", "").replaceAll("(?<=[a-z])([A-Z])", " $1").toLowerCase(Locale.ROOT);
    }

    /** The first letters of the file tell whether it is sealed; H2's own message would only say that something is wrong. */
    private static void file(DatabasePlace place) {
        if (!Files.exists(place.file())) {
            return;
        }
        if (!Files.isWritable(place.file())) {
            throw new RefusedStartException("The database " + place + " cannot be written to: its file is read-only for this user. Nothing was changed.");
        }
        String begins = beginning(place.file());
        if (begins.startsWith(SEALED) && !place.sealed()) {
            throw new RefusedStartException("The database " + place + " is sealed, and no key was given. Set steadwork.database.key-file, or"
                    + " STEADWORK_DATABASE_KEY in the environment. Nothing was changed.");
        }
        if (begins.startsWith(PLAIN) && place.sealed()) {
            throw new RefusedStartException("A database key is set, but " + place + " is not sealed. Seal it once with the command change-database-key:"
                    + " set steadwork.database.new-key-file instead of the key. Nothing was changed.");
        }
    }

    static String beginning(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(SEALED.length()), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new RefusedStartException("The database file " + file + " cannot be read. Nothing was changed.", e);
        }
    }
}
