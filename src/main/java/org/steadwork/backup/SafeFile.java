package org.steadwork.backup;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.steadwork.account.trail.TrailHead;
import org.steadwork.tables.Snapshot;

/** Writes a backup under another name, forces it to the disk, reads it back whole, and only then gives it its name. */
final class SafeFile {

    private SafeFile() {
    }

    /**
     * @param trailEnd read before the snapshot was taken
     * @throws RefusedBackupException when there is such a file already, or the disk does not take it; no half file stays then
     */
    static BackupHead write(Snapshot snapshot, Optional<TrailHead> trailEnd, BackupKey key, Instant now, Path file) throws SQLException, IOException {
        if (Files.exists(file)) {
            throw new RefusedBackupException("There is a file " + file + " already. A backup is never written over another");
        }
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            BackupHead head;
            try (FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING);
                    OutputStream out = Channels.newOutputStream(channel)) {
                head = new BackupWriter().write(snapshot, trailEnd, key, now, new Forced(out, channel));
            }
            new BackupFile(part, key).check();
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
            return head;
        } catch (FileSystemException e) {
            throw new RefusedBackupException("The backup cannot be written to " + file + ": " + (e.getReason() == null ? "no access" : e.getReason()), e);
        } catch (IOException e) {
            throw new RefusedBackupException("The backup could not be written to its end: " + e.getMessage(), e);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** Forces the file to the disk when it is closed. */
    private static final class Forced extends FilterOutputStream {

        private final FileChannel channel;

        Forced(OutputStream out, FileChannel channel) {
            super(out);
            this.channel = channel;
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            flush();
            channel.force(true);
            super.close();
        }
    }
}
