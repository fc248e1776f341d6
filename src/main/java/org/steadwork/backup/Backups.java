package org.steadwork.backup;

import io.agroal.api.AgroalDataSource;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicReference;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.Config;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.steadwork.account.trail.TrailHead;
import org.steadwork.storage.WorkTurns;
import org.steadwork.tables.Snapshot;

/** Makes backups while the clinic runs, one at a time, and thins out those of the schedule. */
@ApplicationScoped
class Backups {

    private static final Logger LOG = Logger.getLogger("steadwork.backup");
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH-mm-ss", Locale.ROOT);
    private static final String WORK = "backup";
    private static final String SCHEDULED = "scheduled";
    static final Pattern NAME = Pattern.compile("[a-z0-9_-]+-\\d{4}-\\d\\d-\\d\\dT\\d\\d-\\d\\d-\\d\\d-(scheduled|asked)\\.backup");

    /** A backup file that lies in the folder. */
    record Kept(String name, long bytes) {
    }

    @Inject
    AgroalDataSource source;

    @Inject
    BackupRuns runs;

    @Inject
    WorkTurns turns;

    @Inject
    Config config;

    @Inject
    Clock clock;

    @ConfigProperty(name = "steadwork.backup.folder")
    Path folder;

    @ConfigProperty(name = "steadwork.database")
    String database;

    @ConfigProperty(name = "steadwork.backup.keep")
    int keep;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "backup");
        thread.setDaemon(true);
        return thread;
    });
    private final AtomicReference<Instant> since = new AtomicReference<>();

    /** Returns the key, or empty when none is set; then no backup is made, since none is ever made unsealed. */
    Optional<BackupKey> key() {
        return BackupKey.from(config);
    }

    Path folder() {
        return folder.toAbsolutePath().normalize();
    }

    /** Since when a backup is being made, by this node or another. */
    Optional<Instant> running() {
        return Optional.ofNullable(since.get()).or(() -> turns.heldSince(WORK));
    }

    /**
     * Begins a backup on a thread of its own.
     *
     * @param askedBy null for the schedule
     * @return what ends with it; empty when one is being made already
     */
    Optional<Future<?>> begin(String askedBy) {
        if (turns.heldSince(WORK).isPresent() || !since.compareAndSet(null, Instant.now(clock))) {
            return Optional.empty();
        }
        return Optional.of(worker.submit(() -> {
            try {
                makeInTurn(askedBy);
            } finally {
                since.set(null);
            }
        }));
    }

    /** Nodes on one database make one at a time, and one for the schedule when it is due. */
    private void makeInTurn(String askedBy) {
        Duration within = askedBy == null ? BackupSchedule.AFTER_FAILURE.multipliedBy(3).dividedBy(4) : Duration.ZERO;
        if (!turns.take(WORK, within, () -> make(askedBy))) {
            LOG.info("No backup was begun here: another node makes one, or just did");
        }
    }

    @ActivateRequestContext
    void make(String askedBy) {
        Instant began = Instant.now(clock);
        Long run = null;
        try {
            run = runs.begin(began, askedBy);
            String name = database + "-" + STAMP.format(LocalDateTime.ofInstant(began, ZoneId.systemDefault())) + "-"
                    + (askedBy == null ? SCHEDULED : "asked") + ".backup";
            BackupHead head = write(name, began);
            long bytes = Files.size(folder.resolve(name));
            runs.made(run, Instant.now(clock), name, bytes, head.rows());
            LOG.infof("Backup made: %s, %d rows", name, (Object) head.rows());
            thin();
        } catch (RefusedBackupException e) {
            failed(run, e.getMessage());
        } catch (Exception e) {
            LOG.error("Backup failed", e);
            failed(run, "It could not be made; the log says more");
        }
    }

    private BackupHead write(String name, Instant now) throws IOException, SQLException {
        BackupKey key = key().orElseThrow(() -> new RefusedBackupException("No backup key is set"));
        Files.createDirectories(folder);
        Optional<TrailHead> trailEnd = TrailEnd.kept(config);
        try (Connection db = source.getConnection(); Snapshot snapshot = Snapshot.take(db)) {
            return SafeFile.write(snapshot, trailEnd, key, now, folder.resolve(name));
        }
    }

    private void failed(Long run, String why) {
        LOG.errorf("No backup was made: %s", why);
        try {
            if (run != null) {
                runs.failed(run, Instant.now(clock), why);
            }
        } catch (RuntimeException e) {
            LOG.errorf("That the backup failed could not be recorded: %s", e.getClass().getSimpleName());
        }
    }

    /** Removes the oldest of the schedule's own backups, never one somebody asked for. */
    private void thin() throws IOException {
        List<Kept> own = files().stream().filter(one -> one.name().startsWith(database + "-") && one.name().contains("-" + SCHEDULED + ".")).toList();
        for (Kept old : own.subList(Math.min(keep, own.size()), own.size())) {
            Files.deleteIfExists(folder.resolve(old.name()));
        }
    }

    /** Returns the backups that lie in the folder, the newest first. */
    List<Kept> files() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(file -> NAME.matcher(file.getFileName().toString()).matches())
                    .sorted(Comparator.comparing((Path file) -> file.getFileName().toString()).reversed())
                    .map(file -> new Kept(file.getFileName().toString(), file.toFile().length())).toList();
        } catch (IOException e) {
            LOG.warnf("The backup folder cannot be read: %s", e.getMessage());
            return List.of();
        }
    }

    @PreDestroy
    void end() {
        worker.shutdown();
    }
}
