package org.steadwork.backup;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.zip.GZIPInputStream;

/** A backup that lies in a file. {@link #check} reads it from the first byte to the last before anything is done with it. */
final class BackupFile {

    private static final int MOST_HEAD = 64 * 1024 * 1024;

    /** Takes the rows, in the order of the file. */
    interface Rows {
        void row(BackupHead.Part part, Object[] values) throws Exception;
    }

    private final ObjectMapper json = new ObjectMapper();
    private final Path file;
    private final BackupKey key;

    BackupFile(Path file, BackupKey key) {
        this.file = file;
        this.key = key;
    }

    /** What was read: head and tail, the rows having gone to whoever took them. */
    record Read(BackupHead head, BackupTail tail) {
    }

    /**
     * Reads it all.
     *
     * @throws RefusedBackupException when it is no backup, damaged, cut off, sealed with another key or made by a newer Steadwork
     */
    Read check() {
        return read((part, values) -> { });
    }

    /** Reads it all and hands each row on. */
    Read read(Rows rows) {
        try (InputStream raw = new BufferedInputStream(Files.newInputStream(file)); SealedInput opened = new SealedInput(raw, key)) {
            MessageDigest sha = RowDigest.sha256();
            DigestInputStream digesting = new DigestInputStream(new BufferedInputStream(new GZIPInputStream(opened, Seal.CHUNK), Seal.CHUNK), sha);
            DataInputStream in = new DataInputStream(digesting);
            BackupHead head = head(in);
            for (BackupHead.Part part : head.tables()) {
                table(part, in, rows);
            }
            BackupTail tail = json.readValue(block(in), BackupTail.class);
            byte[] expected = sha.digest();
            digesting.on(false);
            if (!MessageDigest.isEqual(expected, in.readNBytes(expected.length)) || in.read() >= 0 || opened.read() >= 0) {
                throw damaged(null);
            }
            return new Read(head, tail);
        } catch (NoSuchFileException e) {
            throw new RefusedBackupException("There is no file " + file, e);
        } catch (IOException e) {
            throw e instanceof FileSystemException ? new RefusedBackupException("The file " + file + " cannot be read", e) : damaged(e);
        }
    }

    private BackupHead head(DataInputStream in) throws IOException {
        BackupHead head = json.readValue(block(in), BackupHead.class);
        if (!BackupHead.PRODUCT.equals(head.product())) {
            throw new RefusedBackupException("This is no backup of Steadwork");
        }
        if (head.format() > BackupHead.FORMAT) {
            throw new RefusedBackupException("This backup was made by a newer Steadwork. Restore it with that version or a later one");
        }
        return head;
    }

    private static void table(BackupHead.Part part, DataInputStream in, Rows rows) throws IOException {
        long read = 0;
        while (in.readByte() == BackupWriter.ROW) {
            Object[] values = RowCodec.decode(in, part.columns());
            read++;
            try {
                rows.row(part, values);
            } catch (RuntimeException e) {
                throw e;
            } catch (Exception e) {
                throw new RefusedBackupException("A row of the table " + part.name() + " could not be stored; nothing was restored", e);
            }
        }
        if (read != part.rows()) {
            throw damaged(null);
        }
    }

    private static byte[] block(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > MOST_HEAD) {
            throw new EOFException();
        }
        return in.readNBytes(length);
    }

    private static RefusedBackupException damaged(Throwable cause) {
        return new RefusedBackupException("The backup is damaged or cut off; nothing of it was taken", cause);
    }
}
