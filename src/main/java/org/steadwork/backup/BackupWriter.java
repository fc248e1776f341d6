package org.steadwork.backup;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.GZIPOutputStream;
import org.steadwork.account.trail.TrailHead;
import org.steadwork.storage.SchemaVersion;
import org.steadwork.tables.Column;
import org.steadwork.tables.Sequences;
import org.steadwork.tables.Snapshot;
import org.steadwork.tables.Table;
import org.steadwork.tables.Tables;

/**
 * Writes every row of every table, as one moment saw them, sealed and compressed: head as JSON, rows table by table, tail as JSON, SHA-256 of
 * all before it. docs/operations.md describes the format.
 */
final class BackupWriter {

    static final int ROW = 1;
    static final int END = 0;
    private static final int FETCH = 500;

    private final ObjectMapper json = new ObjectMapper();

    /** Writes one backup and closes the stream; returns its head. */
    BackupHead write(Snapshot snapshot, Optional<TrailHead> trailEnd, BackupKey key, Instant now, OutputStream to) throws SQLException, IOException {
        Connection db = snapshot.connection();
        Tables tables = Tables.read(db);
        BackupHead head = head(db, tables, now);
        DigestingOutput digesting = new DigestingOutput(new GZIPOutputStream(new SealedOutput(to, Seal.fresh(key)), Seal.CHUNK));
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(digesting, Seal.CHUNK))) {
            block(json.writeValueAsBytes(head), out);
            Map<String, String> digests = new TreeMap<>();
            for (BackupHead.Part part : head.tables()) {
                digests.put(part.name(), rows(db, part, out));
            }
            block(json.writeValueAsBytes(new BackupTail(Sequences.read(db), digests, trailEnd.orElse(null))), out);
            out.flush();
            out.write(digesting.digest());
        }
        return head;
    }

    /** Says what a database holds. */
    static BackupHead head(Connection db, Tables tables, Instant now) throws SQLException {
        List<BackupHead.Part> parts = new ArrayList<>();
        for (Table table : tables.all()) {
            parts.add(new BackupHead.Part(table.name(), table.columns(), count(db, "select count(*) from " + table.name())));
        }
        boolean demo = parts.stream().anyMatch(part -> part.name().equals("demo_part") && part.rows() > 0);
        return new BackupHead(BackupHead.PRODUCT, BackupHead.FORMAT, SchemaVersion.of(db).orElseThrow(() ->
                new RefusedBackupException("This database holds no clinic; there is nothing to keep")), demo, now.toString(),
                db.getMetaData().getDatabaseProductName(), parts);
    }

    static long count(Connection db, String sql) throws SQLException {
        try (Statement statement = db.createStatement(); ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return row.getLong(1);
        }
    }

    private static String rows(Connection db, BackupHead.Part part, DataOutputStream out) throws SQLException, IOException {
        RowDigest digest = new RowDigest();
        long written = 0;
        try (Statement statement = db.createStatement()) {
            statement.setFetchSize(FETCH);
            try (ResultSet rows = statement.executeQuery(select(part))) {
                while (rows.next()) {
                    byte[] row = RowCodec.encode(rows, part.columns());
                    digest.add(row);
                    out.writeByte(ROW);
                    out.write(row);
                    written++;
                }
            }
        }
        out.writeByte(END);
        if (written != part.rows()) {
            throw new IllegalStateException("The table " + part.name() + " gave " + written + " rows, but counted " + part.rows());
        }
        return digest.hex();
    }

    static String select(BackupHead.Part part) {
        return "select " + String.join(", ", part.columns().stream().map(Column::name).toList()) + " from " + part.name();
    }

    private static void block(byte[] bytes, DataOutputStream out) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }
}
