package org.steadwork.backup;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Every row of every table as texts, read without any of the product's own code, so that two databases can be compared. */
public final class RowByRow {

    private RowByRow() {
    }

    public static Map<String, List<String>> of(Connection db) throws SQLException {
        Map<String, List<String>> tables = new TreeMap<>();
        DatabaseMetaData about = db.getMetaData();
        List<String> names = new ArrayList<>();
        try (ResultSet rows = about.getTables(null, "public", "%", new String[]{"TABLE", "BASE TABLE"})) {
            while (rows.next()) {
                names.add(rows.getString("TABLE_NAME"));
            }
        }
        for (String name : names) {
            if (!name.equals("flyway_schema_history")) {
                tables.put(name, rows(db, name));
            }
        }
        return tables;
    }

    private static List<String> rows(Connection db, String table) throws SQLException {
        List<String> texts = new ArrayList<>();
        try (Statement statement = db.createStatement(); ResultSet rows = statement.executeQuery("select * from " + table)) {
            int columns = rows.getMetaData().getColumnCount();
            Map<String, Integer> sorted = new TreeMap<>();
            for (int i = 1; i <= columns; i++) {
                sorted.put(rows.getMetaData().getColumnName(i), i);
            }
            while (rows.next()) {
                List<String> values = new ArrayList<>();
                for (Map.Entry<String, Integer> column : sorted.entrySet()) {
                    values.add(column.getKey() + "=" + text(rows, column.getValue()));
                }
                texts.add(values.toString());
            }
        }
        Collections.sort(texts);
        return texts;
    }

    private static String text(ResultSet row, int place) throws SQLException {
        String type = row.getMetaData().getColumnTypeName(place).toLowerCase();
        if (type.contains("binary") || type.equals("bytea") || type.contains("blob")) {
            byte[] bytes = row.getBytes(place);
            return bytes == null ? "null" : bytes.length + ":" + Arrays.hashCode(bytes);
        }
        if (type.equals("timestamp")) {
            return String.valueOf(row.getObject(place, LocalDateTime.class));
        }
        if (type.startsWith("timestamp")) {
            OffsetDateTime moment = row.getObject(place, OffsetDateTime.class);
            return moment == null ? "null" : moment.toInstant().toString();
        }
        if (type.equals("bool") || type.equals("boolean")) {
            boolean value = row.getBoolean(place);
            return row.wasNull() ? "null" : String.valueOf(value);
        }
        return String.valueOf(row.getString(place));
    }
}
