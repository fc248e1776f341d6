package org.steadwork.tables;

import java.sql.Connection;
import java.sql.SQLException;

/** A connection that sees the whole database as it was at one moment, while others write on. Closing it changes nothing. */
public final class Snapshot implements AutoCloseable {

    /** H2's level at which all tables are seen as of the first statement; its repeatable read takes them one by one. */
    private static final int H2_SNAPSHOT = 6;

    private final Connection db;
    private final int isolationBefore;

    private Snapshot(Connection db, int isolationBefore) {
        this.db = db;
        this.isolationBefore = isolationBefore;
    }

    /** Takes the snapshot on a connection that is in no transaction. */
    public static Snapshot take(Connection db) throws SQLException {
        int before = db.getTransactionIsolation();
        db.setAutoCommit(false);
        db.setTransactionIsolation(Sequences.h2(db) ? H2_SNAPSHOT : Connection.TRANSACTION_REPEATABLE_READ);
        return new Snapshot(db, before);
    }

    public Connection connection() {
        return db;
    }

    @Override
    public void close() throws SQLException {
        db.rollback();
        db.setTransactionIsolation(isolationBefore);
        db.setAutoCommit(true);
    }
}
