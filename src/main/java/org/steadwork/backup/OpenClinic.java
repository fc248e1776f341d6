package org.steadwork.backup;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongConsumer;
import org.steadwork.tables.Snapshot;
import org.steadwork.tables.Tables;

/** The rows of a clinic whose database is open here, as one moment sees them. */
final class OpenClinic implements RowSource {

    private static final int FETCH = 500;
    private static final int TOLD_EVERY = 100_000;

    private final Connection db;
    private final BackupHead head;
    private final LongConsumer progress;
    private long read;

    /** @param progress is told the rows read so far, every {@value #TOLD_EVERY} */
    OpenClinic(Snapshot snapshot, Instant now, LongConsumer progress) throws SQLException {
        this.db = snapshot.connection();
        this.head = BackupWriter.head(db, Tables.read(db), now);
        this.progress = progress;
    }

    BackupHead head() {
        return head;
    }

    @Override
    public Map<String, String> read(BackupFile.Rows rows) throws SQLException {
        Map<String, String> digests = new TreeMap<>();
        for (BackupHead.Part part : head.tables()) {
            digests.put(part.name(), read(part, rows));
        }
        return digests;
    }

    private String read(BackupHead.Part part, BackupFile.Rows to) throws SQLException {
        RowDigest digest = new RowDigest();
        try (Statement statement = db.createStatement()) {
            statement.setFetchSize(FETCH);
            try (ResultSet rows = statement.executeQuery(BackupWriter.select(part))) {
                while (rows.next()) {
                    byte[] row = RowCodec.encode(rows, part.columns());
                    digest.add(row);
                    hand(part, row, to);
                    if (++read % TOLD_EVERY == 0) {
                        progress.accept(read);
                    }
                }
            }
        }
        return digest.hex();
    }

    private static void hand(BackupHead.Part part, byte[] row, BackupFile.Rows to) throws SQLException {
        try {
            to.row(part, RowCodec.decode(new DataInputStream(new ByteArrayInputStream(row)), part.columns()));
        } catch (SQLException | RuntimeException e) {
            throw e;
        } catch (IOException e) {
            throw new IllegalStateException("What was encoded here can be decoded here", e);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}
