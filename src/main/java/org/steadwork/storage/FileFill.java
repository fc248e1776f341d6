package org.steadwork.storage;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/**
 * How full an open H2 file is.
 *
 * @param bytes  of the file
 * @param chunks percent of the file that its chunks take
 * @param live   percent of the chunks that is still in use
 */
record FileFill(long bytes, int chunks, int live) {

    /** What a small file wastes is not worth making it small. */
    private static final long LARGE = 16_000_000;
    private static final int LEAST_PERCENT = 50;

    static FileFill of(Connection db) throws SQLException {
        try (Statement sql = db.createStatement()) {
            return new FileFill(setting(sql, "FILE_SIZE"), (int) setting(sql, "FILL_RATE"), (int) setting(sql, "CHUNKS_FILL_RATE"));
        }
    }

    private static long setting(Statement sql, String name) throws SQLException {
        try (ResultSet value = sql.executeQuery("select setting_value from information_schema.settings where setting_name = 'info." + name + "'")) {
            if (!value.next()) {
                throw new SQLException("H2 does not say info." + name);
            }
            return value.getLong(1);
        }
    }

    /** Whether less than half of a large file is used: after many ends that were none, since a normal end makes it small. */
    boolean wasteful() {
        return bytes > LARGE && chunks * live < LEAST_PERCENT * 100;
    }
}
