package org.steadwork.backup;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;
import org.steadwork.account.trail.TrailHead;
import org.steadwork.storage.DatabasePlace;
import org.steadwork.storage.Migrations;
import org.steadwork.storage.NodeGuard;
import org.steadwork.storage.SchemaVersion;
import org.steadwork.kernel.RefusedStartException;
import org.steadwork.tables.Tables;

/**
 * The command {@code restore FILE}: into a new H2 file, which gets its name only when all of it is in and reads back the same, or into an empty
 * PostgreSQL database. {@code --move-old-aside} lets it take the place of a clinic that is there; the old file stays beside it.
 */
public final class RestoreCommand {

    private static final String ASIDE = "--move-old-aside";
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH-mm-ss", Locale.ROOT);

    private RestoreCommand() {
    }

    public static int run(Config config, List<String> words, PrintStream out) {
        boolean aside = words.contains(ASIDE);
        List<String> files = words.stream().filter(word -> !word.equals(ASIDE)).toList();
        if (files.size() != 1) {
            throw new RefusedStartException("restore takes one file: restore clinic.backup, and " + ASIDE + " where a clinic is there already");
        }
        BackupFile file = new BackupFile(Path.of(files.get(0)), key(config));
        BackupFile.Read checked = file.check();
        requireFit(checked.head(), config);
        DatabasePlace place = DatabasePlace.from(config);
        try {
            String stamp = STAMP.format(LocalDateTime.now(Clock.systemDefaultZone()));
            Optional<TrailHead> end = place.h2File() ? intoFile(place, file, checked, aside, stamp, out) : into(place, file, checked);
            if (end.isPresent()) {
                TrailEnd.put(config, end.get(), stamp, Clock.systemUTC().instant());
            }
        } catch (SQLException | IOException e) {
            throw new RefusedStartException("The backup could not be restored: " + e.getMessage() + ". What was there before is as it was.", e);
        }
        out.printf(Locale.ROOT, "%s holds the clinic of %s now: %d rows of %d tables, each compared with the backup.%n", place, checked.head().madeAt(),
                checked.head().rows(), checked.head().tables().size());
        return 0;
    }

    static BackupKey key(Config config) {
        return BackupKey.from(config).orElseThrow(() -> new RefusedStartException("No backup key is set. Set steadwork.backup.key-file, or STEADWORK_BACKUP_KEY in the"
                + " environment; the command make-key FILE makes one."));
    }

    private static void requireFit(BackupHead head, Config config) {
        if (SchemaVersion.compare(head.schema(), Migrations.carried().last()) > 0) {
            throw new RefusedBackupException("This backup was made by a newer Steadwork (" + head.schema() + "). Restore it with that version or a later one");
        }
        if (head.demo() != config.getValue("steadwork.demo", Boolean.class)) {
            throw new RefusedBackupException(head.demo() ? "This backup holds the invented demo clinic. Restore it with: demo restore FILE"
                    : "This backup holds a real clinic. It is never restored into the demo");
        }
    }

    private static Optional<TrailHead> intoFile(DatabasePlace place, BackupFile file, BackupFile.Read checked, boolean aside, String stamp, PrintStream out)
            throws SQLException, IOException {
        Files.createDirectories(place.folder());
        boolean there = Files.exists(place.file());
        if (there && !aside) {
            throw new RefusedStartException("There is a clinic at " + place + " already. Nothing was changed. To put the backup in its place, and keep the old file"
                    + " beside it, add " + ASIDE);
        }
        if (there) {
            requireUnused(place);
        }
        DatabasePlace fresh = place.at(place.folder(), place.name() + "-restoring");
        Files.deleteIfExists(fresh.file());
        try {
            Optional<TrailHead> end = into(fresh, file, checked);
            if (there) {
                Path old = place.folder().resolve(place.name() + "-before-" + stamp + ".mv.db");
                Files.move(place.file(), old, StandardCopyOption.ATOMIC_MOVE);
                out.println("The clinic that was there lies in " + old + " now.");
            }
            Files.move(fresh.file(), place.file(), StandardCopyOption.ATOMIC_MOVE);
            return end;
        } finally {
            Files.deleteIfExists(fresh.file());
        }
    }

    /** A file another process holds is locked by it; a damaged one is not, and may be moved aside. */
    private static void requireUnused(DatabasePlace place) throws IOException {
        try (FileChannel channel = FileChannel.open(place.file(), StandardOpenOption.WRITE); FileLock lock = channel.tryLock()) {
            if (lock == null) {
                throw new RefusedStartException("The clinic in " + place.folder() + " is running. End it first. Nothing was changed.");
            }
        }
    }

    /** Returns the end of the audit trail to keep beside it. */
    private static Optional<TrailHead> into(DatabasePlace place, BackupFile file, BackupFile.Read checked) throws SQLException {
        try (Connection guard = place.postgresql() ? place.open() : null) {
            if (guard != null) {
                NodeGuard.requireAlone(guard, place);
            }
            return fill(place, file, checked);
        }
    }

    /** On H2 each step opens the file anew: its checks with lists outlive no connection that made them. */
    private static Optional<TrailHead> fill(DatabasePlace place, BackupFile file, BackupFile.Read checked) throws SQLException {
        Migrations migrations = Migrations.carried();
        try (Connection db = place.open()) {
            Optional<String> version = SchemaVersion.of(db);
            if (version.isEmpty() && !Tables.read(db).all().isEmpty() || version.isPresent() && !version.get().equals(checked.head().schema())) {
                throw new RefusedStartException("The database at " + place + " is not empty. A backup is restored into an empty one only. Nothing was changed.");
            }
        }
        migrations.migrate(place.url(), place.user(), place.password(), checked.head().schema());
        try (Connection db = place.open()) {
            Restoring.into(db, file, checked);
        }
        migrations.migrate(place.url(), place.user(), place.password(), migrations.last());
        try (Connection db = place.open()) {
            return TrailEnd.of(db, checked.tail().trailEnd());
        }
    }
}
