package org.steadwork.tables;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.TreeMap;

/** The sequences that numbers come from, each with the next number it would give. */
public final class Sequences {

    private static final String OF_H2 = "select sequence_name, base_value from information_schema.sequences where sequence_schema = current_schema";
    private static final String OF_POSTGRESQL = "select sequencename, increment_by from pg_sequences where schemaname = current_schema";

    private Sequences() {
    }

    public static Map<String, Long> read(Connection db) throws SQLException {
        boolean h2 = h2(db);
        Map<String, Long> numbers = pairs(db, h2 ? OF_H2 : OF_POSTGRESQL);
        if (!h2) {
            // the view of all sequences hides the value of one that was set and not yet asked
            for (Map.Entry<String, Long> one : numbers.entrySet()) {
                one.setValue(pairs(db, "select 'next', case when is_called then last_value + " + one.getValue() + " else last_value end from " + one.getKey()).get("next"));
            }
        }
        return numbers;
    }

    private static Map<String, Long> pairs(Connection db, String sql) throws SQLException {
        Map<String, Long> pairs = new TreeMap<>();
        try (Statement statement = db.createStatement(); ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                pairs.put(rows.getString(1), rows.getLong(2));
            }
        }
        return pairs;
    }

    /** Sets them; on H2 this ends the running transaction, so it is done before rows are stored. */
    public static void set(Connection db, Map<String, Long> next) throws SQLException {
        try (Statement statement = db.createStatement()) {
            for (Map.Entry<String, Long> one : next.entrySet()) {
                if (!one.getKey().matches("[a-z_0-9]+")) {
                    throw new IllegalArgumentException("No sequence is called so: " + one.getKey());
                }
                statement.execute("alter sequence " + one.getKey() + " restart with " + one.getValue());
            }
        }
    }

    public static boolean h2(Connection db) throws SQLException {
        return db.getMetaData().getDatabaseProductName().equals("H2");
    }
}
