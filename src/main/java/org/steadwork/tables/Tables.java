package org.steadwork.tables;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** All tables of the clinic, those referred to before those that refer; Flyway's own is not among them. */
public final class Tables {

    public static final String MIGRATIONS = "flyway_schema_history";
    private static final String HISTORY = "_history";

    private final Map<String, Table> tables;

    private Tables(Map<String, Table> tables) {
        this.tables = tables;
    }

    /**
     * Reads them from the database.
     *
     * @throws IllegalStateException when two tables refer to one another in a circle, or a column is of an unknown type
     */
    public static Tables read(Connection db) throws SQLException {
        DatabaseMetaData about = db.getMetaData();
        String schema = db.getSchema();
        Set<String> names = names(about, schema);
        Map<String, List<Column>> columns = columns(about, schema, names);
        Map<String, Table> found = new TreeMap<>();
        for (String name : names) {
            found.put(name, new Table(name, columns.get(name), key(about, schema, name), references(about, schema, name)));
        }
        return new Tables(parentsFirst(found));
    }

    private static Set<String> names(DatabaseMetaData about, String schema) throws SQLException {
        Set<String> names = new TreeSet<>();
        try (ResultSet rows = about.getTables(null, schema, "%", new String[]{"TABLE", "BASE TABLE"})) {
            while (rows.next()) {
                names.add(rows.getString("TABLE_NAME"));
            }
        }
        names.remove(MIGRATIONS);
        return names;
    }

    /** Reads the columns; temporary tables, such as Hibernate makes, are passed over. */
    private static Map<String, List<Column>> columns(DatabaseMetaData about, String schema, Set<String> names) throws SQLException {
        Map<String, List<Column>> columns = new LinkedHashMap<>();
        try (ResultSet rows = about.getColumns(null, schema, "%", "%")) {
            while (rows.next()) {
                String table = rows.getString("TABLE_NAME");
                if (!names.contains(table)) {
                    continue;
                }
                String column = rows.getString("COLUMN_NAME");
                columns.computeIfAbsent(table, key -> new ArrayList<>())
                        .add(new Column(column, ColumnKind.of(table, column, rows.getInt("DATA_TYPE"), rows.getString("TYPE_NAME"))));
            }
        }
        return columns;
    }

    private static List<String> key(DatabaseMetaData about, String schema, String table) throws SQLException {
        Map<Integer, String> key = new TreeMap<>();
        try (ResultSet rows = about.getPrimaryKeys(null, schema, table)) {
            while (rows.next()) {
                key.put(rows.getInt("KEY_SEQ"), rows.getString("COLUMN_NAME"));
            }
        }
        return List.copyOf(key.values());
    }

    private static List<Reference> references(DatabaseMetaData about, String schema, String table) throws SQLException {
        Map<String, Reference> references = new TreeMap<>();
        try (ResultSet rows = about.getImportedKeys(null, schema, table)) {
            while (rows.next()) {
                Reference one = references.get(rows.getString("FK_NAME"));
                if (one == null) {
                    one = new Reference(new ArrayList<>(), rows.getString("PKTABLE_NAME"), new ArrayList<>());
                    references.put(rows.getString("FK_NAME"), one);
                }
                one.columns().add(rows.getString("FKCOLUMN_NAME"));
                one.parentColumns().add(rows.getString("PKCOLUMN_NAME"));
            }
        }
        return List.copyOf(references.values());
    }

    private static Map<String, Table> parentsFirst(Map<String, Table> found) {
        Map<String, Table> sorted = new LinkedHashMap<>();
        while (sorted.size() < found.size()) {
            Optional<Table> next = found.values().stream().filter(table -> !sorted.containsKey(table.name()) && table.references().stream()
                    .allMatch(one -> sorted.containsKey(one.parent()) || one.parent().equals(table.name()))).findFirst();
            Table table = next.orElseThrow(() -> new IllegalStateException("These tables refer to one another in a circle: "
                    + found.keySet().stream().filter(name -> !sorted.containsKey(name)).toList()));
            sorted.put(table.name(), table);
        }
        return sorted;
    }

    public List<Table> all() {
        return List.copyOf(tables.values());
    }

    public Optional<Table> named(String name) {
        return Optional.ofNullable(tables.get(name));
    }

    /** Returns the table that keeps the earlier states of another's rows, if it has one. */
    public Optional<Table> historyOf(Table table) {
        return named(table.name() + HISTORY);
    }

    public boolean isHistory(Table table) {
        return table.name().endsWith(HISTORY) && tables.containsKey(table.name().substring(0, table.name().length() - HISTORY.length()));
    }
}
