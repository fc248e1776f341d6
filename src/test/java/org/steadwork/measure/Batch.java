package org.steadwork.measure;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** Gathers rows of one table and inserts them together; whoever fills several flushes them in the order in which one needs the other. */
final class Batch implements AutoCloseable {

    private final PreparedStatement statement;
    private int waiting;
    private long rows;

    /** @param columns the table and its columns as {@code insert into} takes them: {@code score (id, version)} */
    Batch(Connection db, String columns) throws SQLException {
        int values = (int) columns.chars().filter(c -> c == ',').count() + 1;
        statement = db.prepareStatement("insert into " + columns + " values (" + "?, ".repeat(values - 1) + "?)");
    }

    void add(Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, values[i]);
        }
        statement.addBatch();
        rows++;
        waiting++;
    }

    void flush() throws SQLException {
        if (waiting > 0) {
            statement.executeBatch();
            waiting = 0;
        }
    }

    long rows() {
        return rows;
    }

    @Override
    public void close() throws SQLException {
        flush();
        statement.close();
    }
}
