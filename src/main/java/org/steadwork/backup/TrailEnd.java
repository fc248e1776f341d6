package org.steadwork.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;
import org.steadwork.account.trail.AuditChain;
import org.steadwork.account.trail.TrailEndFile;
import org.steadwork.account.trail.TrailHead;

/**
 * Takes the end of the audit trail, which is kept in a file beside the database, into a backup and back. Without it a trail that was shortened
 * before the backup would pass for whole after a restore, and a sound one of an older backup for shortened.
 */
final class TrailEnd {

    private static final String SETTING = "steadwork.audit.anchor-file";

    private TrailEnd() {
    }

    /** Read it before the snapshot is taken: the file is never ahead of the database, and then not of the snapshot either. */
    static Optional<TrailHead> kept(Config config) {
        return file(config).flatMap(TrailEndFile::read);
    }

    /**
     * Returns the end to keep beside a restored database: its own, when that goes on from the one in the backup; else the one in the backup, so
     * that the check says what is missing.
     *
     * @param inBackup null in a backup made before there was one
     */
    static Optional<TrailHead> of(Connection restored, TrailHead inBackup) throws SQLException {
        TrailHead here = null;
        try (PreparedStatement query = restored.prepareStatement("select trail, sealed, hash from audit_head where id = 1"); ResultSet row = query.executeQuery()) {
            if (row.next()) {
                here = new TrailHead(row.getString(1), row.getLong(2), row.getString(3));
            }
        }
        boolean goesOn = inBackup == null || here != null && here.trail().equals(inBackup.trail()) && here.sealed() >= inBackup.sealed()
                && inBackup.hash().equals(hashAt(restored, inBackup.sealed()));
        return Optional.ofNullable(goesOn ? here : inBackup);
    }

    private static String hashAt(Connection restored, long place) throws SQLException {
        if (place == 0) {
            return AuditChain.START;
        }
        try (PreparedStatement query = restored.prepareStatement("select hash from audit_seal where sequence = ?")) {
            query.setLong(1, place);
            try (ResultSet row = query.executeQuery()) {
                return row.next() ? row.getString(1) : null;
            }
        }
    }

    /** Puts it beside the restored database; a file that is there is kept under another name. */
    static void put(Config config, TrailHead end, String stamp, Instant now) throws IOException {
        Optional<TrailEndFile> file = file(config);
        if (file.isPresent()) {
            Path path = file.get().path();
            if (Files.exists(path)) {
                String name = path.getFileName().toString();
                int dot = name.lastIndexOf('.') < 0 ? name.length() : name.lastIndexOf('.');
                Files.move(path, path.resolveSibling(name.substring(0, dot) + "-before-" + stamp + name.substring(dot)), StandardCopyOption.ATOMIC_MOVE);
            }
            file.get().write(end, now);
        }
    }

    private static Optional<TrailEndFile> file(Config config) {
        return config.getOptionalValue(SETTING, String.class).map(Path::of).map(TrailEndFile::new);
    }
}
