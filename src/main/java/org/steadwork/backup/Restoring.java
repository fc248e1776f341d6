package org.steadwork.backup;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.tables.Column;
import org.steadwork.tables.Sequences;
import org.steadwork.tables.Table;
import org.steadwork.tables.Tables;

/**
 * Puts a backup into an empty database whose schema has the backup's version. All rows go in by one transaction, and before it ends every
 * table is read back and its fingerprint compared with the backup's.
 */
final class Restoring {

    private static final int BATCH = 500;
    /** Tables that a migration puts its own row into; the backup brings that row as it was. */
    private static final Set<String> BEGUN_BY_MIGRATIONS = Set.of("worklist_state");

    private final Connection db;
    private final Tables tables;
    private final Map<String, List<Object[]>> toItself = new HashMap<>();

    private Restoring(Connection db) throws SQLException {
        this.db = db;
        this.tables = Tables.read(db);
    }

    /**
     * Restores.
     *
     * @param checked what {@link BackupFile#check} gave for the same file
     * @throws RefusedBackupException when the database is not empty or not of the backup's shape; nothing is stored then
     */
    static void into(Connection db, BackupFile file, BackupFile.Read checked) throws SQLException {
        into(db, checked.head(), checked.tail().sequences(), rows -> {
            file.read(rows);
            return checked.tail().digests();
        });
    }

    /** As {@link #into(Connection, BackupFile, BackupFile.Read)}, from wherever the rows come; {@code head} says what they are. */
    static void into(Connection db, BackupHead head, Map<String, Long> sequences, RowSource source) throws SQLException {
        Restoring restoring = new Restoring(db);
        restoring.requireFit(head);
        Sequences.set(db, sequences);
        db.setAutoCommit(false);
        try {
            restoring.compare(head, restoring.load(source, head));
            db.commit();
        } catch (SQLException | RuntimeException e) {
            db.rollback();
            throw e;
        } finally {
            db.setAutoCommit(true);
        }
    }

    private void requireFit(BackupHead head) throws SQLException {
        for (Table table : tables.all()) {
            if (!BEGUN_BY_MIGRATIONS.contains(table.name()) && BackupWriter.count(db, "select count(*) from " + table.name()) > 0) {
                throw new RefusedBackupException("This database holds a clinic already. A backup is restored into an empty one only; nothing was changed");
            }
        }
        Map<String, List<Column>> here = tables.all().stream().collect(Collectors.toMap(Table::name, Table::columns));
        for (BackupHead.Part part : head.tables()) {
            List<Column> columns = here.remove(part.name());
            if (columns == null || columns.size() != part.columns().size() || !columns.containsAll(part.columns())) {
                throw new RefusedBackupException("The table " + part.name() + " of the backup has no place of the same shape here; nothing was restored");
            }
        }
        if (!here.isEmpty()) {
            throw new RefusedBackupException("The backup has no table " + here.keySet().iterator().next() + "; nothing was restored");
        }
    }

    private Map<String, String> load(RowSource source, BackupHead head) throws SQLException {
        for (BackupHead.Part part : head.tables()) {
            if (BEGUN_BY_MIGRATIONS.contains(part.name())) {
                clear(part.name());
            }
            toItself.put(part.name(), new ArrayList<>());
        }
        Map<String, String> digests;
        try (Inserts inserts = new Inserts()) {
            digests = source.read(inserts);
            inserts.flush();
        }
        for (BackupHead.Part part : head.tables()) {
            tieToThemselves(part);
        }
        return digests;
    }

    private void clear(String table) throws SQLException {
        try (Statement sql = db.createStatement()) {
            sql.execute("delete from " + table);
        }
    }

    /** Rows that refer to a row of their own table are tied once all are there. */
    private void tieToThemselves(BackupHead.Part part) throws SQLException {
        List<Object[]> rows = toItself.get(part.name());
        if (rows.isEmpty()) {
            return;
        }
        Table table = tables.named(part.name()).orElseThrow();
        List<Column> set = table.toItself().stream().map(table::column).toList();
        List<Column> key = table.key().stream().map(table::column).toList();
        try (PreparedStatement update = db.prepareStatement("update " + table.name() + " set " + terms(set, ", ") + " where " + terms(key, " and "))) {
            for (Object[] row : rows) {
                int place = 1;
                for (Column column : set) {
                    column.write(update, place++, row[part.columns().indexOf(column)]);
                }
                for (Column column : key) {
                    column.write(update, place++, row[part.columns().indexOf(column)]);
                }
                update.addBatch();
            }
            update.executeBatch();
        }
    }

    private static String terms(List<Column> columns, String between) {
        return columns.stream().map(column -> column.name() + " = ?").collect(Collectors.joining(between));
    }

    private void compare(BackupHead head, Map<String, String> digests) throws SQLException {
        for (BackupHead.Part part : head.tables()) {
            RowDigest digest = new RowDigest();
            try (Statement statement = db.createStatement()) {
                statement.setFetchSize(BATCH);
                try (ResultSet rows = statement.executeQuery(BackupWriter.select(part))) {
                    while (rows.next()) {
                        digest.add(RowCodec.encode(rows, part.columns()));
                    }
                }
            }
            if (!digest.hex().equals(digests.get(part.name()))) {
                throw new RefusedBackupException("The table " + part.name() + " does not read back as it was backed up; nothing was restored");
            }
        }
    }

    /** Stores rows in batches, table by table. */
    private final class Inserts implements BackupFile.Rows, AutoCloseable {

        private BackupHead.Part part;
        private List<String> held = List.of();
        private PreparedStatement insert;
        private int waiting;

        @Override
        public void row(BackupHead.Part of, Object[] values) throws SQLException {
            if (part != of) {
                begin(of);
            }
            boolean tied = false;
            for (int i = 0; i < values.length; i++) {
                Column column = part.columns().get(i);
                boolean later = values[i] != null && held.contains(column.name());
                tied |= later;
                column.write(insert, i + 1, later ? null : values[i]);
            }
            if (tied) {
                toItself.get(part.name()).add(values);
            }
            insert.addBatch();
            if (++waiting == BATCH) {
                flush();
            }
        }

        private void begin(BackupHead.Part next) throws SQLException {
            flush();
            close();
            part = next;
            held = tables.named(next.name()).orElseThrow().toItself();
            insert = db.prepareStatement("insert into " + next.name() + " (" + String.join(", ", next.columns().stream().map(Column::name).toList())
                    + ") values (" + String.join(", ", Collections.nCopies(next.columns().size(), "?")) + ")");
        }

        void flush() throws SQLException {
            if (waiting > 0) {
                insert.executeBatch();
                waiting = 0;
            }
        }

        @Override
        public void close() throws SQLException {
            if (insert != null) {
                insert.close();
            }
        }
    }
}
