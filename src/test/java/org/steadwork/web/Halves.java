package org.steadwork.web;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.steadwork.tables.Table;
import org.steadwork.tables.Tables;

/** Looks for what was stored by half, table by table. */
final class Halves {

    /** What a refused request may well add to: that it was made, by whom, and how often a door was tried. */
    private static final Set<String> MAY_GROW = Set.of("audit_event", "sign_in_session", "own_visit");

    private final DataSource source;

    Halves(DataSource source) {
        this.source = source;
    }

    /** Returns the number of rows of each table in which a refused request must leave nothing. */
    Map<String, Long> counts() throws SQLException {
        Map<String, Long> counts = new TreeMap<>();
        try (Connection db = source.getConnection(); Statement sql = db.createStatement()) {
            for (Table table : Tables.read(db).all()) {
                if (!MAY_GROW.contains(table.name())) {
                    counts.put(table.name(), number(sql, "select count(*) from " + table.name()));
                }
            }
        }
        return counts;
    }

    /** Returns how many rows of each table have a history table and no first state in it; other tests put some there past the application. */
    Map<String, Long> withoutHistory() throws SQLException {
        Map<String, Long> halves = new TreeMap<>();
        try (Connection db = source.getConnection(); Statement sql = db.createStatement()) {
            Tables tables = Tables.read(db);
            for (Table table : tables.all()) {
                Table history = tables.historyOf(table).orElse(null);
                if (history != null && table.key().equals(List.of("id")) && history.has("id")) {
                    long without = number(sql, "select count(*) from " + table.name() + " t where not exists (select 1 from " + history.name() + " h where h.id = t.id)");
                    halves.put(table.name(), without);
                }
            }
        }
        return halves;
    }

    private static long number(Statement sql, String query) throws SQLException {
        try (ResultSet row = sql.executeQuery(query)) {
            row.next();
            return row.getLong(1);
        }
    }
}
