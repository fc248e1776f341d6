package org.steadwork.retention;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.steadwork.tables.Column;
import org.steadwork.tables.Reference;
import org.steadwork.tables.Table;
import org.steadwork.tables.Tables;

/**
 * Everything the database holds about one person: the patient's row, every row that leads to it through foreign keys, and the earlier states of
 * all these, also of rows that are gone. It is found from the tables themselves, so what a later feature adds is found too.
 */
final class PersonRows {

    private static final String ROOT = "patient";
    private static final int AT_ONCE = 200;

    private final Connection db;
    private final Tables tables;
    /** By table, the values of its first key column that belong to the person; live rows and earlier states alike. */
    private final Map<String, Set<Object>> keys = new LinkedHashMap<>();

    private PersonRows(Connection db) throws SQLException {
        this.db = db;
        this.tables = Tables.read(db);
    }

    static PersonRows of(Connection db, long patient) throws SQLException {
        PersonRows rows = new PersonRows(db);
        rows.keys.put(ROOT, new LinkedHashSet<>(Set.of(patient)));
        for (Table table : rows.tables.all()) {
            if (!rows.tables.isHistory(table) && !table.name().equals(ROOT)) {
                rows.reach(table);
            }
        }
        return rows;
    }

    private void reach(Table table) throws SQLException {
        List<Reference> owners = owners(table);
        if (owners.isEmpty()) {
            return;
        }
        Set<Object> found = new LinkedHashSet<>();
        keys.put(table.name(), found);
        if (!identified(table, owners)) {
            return; // its rows are found by what they refer to, and nothing refers to them
        }
        for (Reference owner : owners) {
            collect(table, table.key().get(0), owner, found);
            Table history = tables.historyOf(table).orElse(null);
            if (history != null && history.has(link(owner)) && history.has(table.key().get(0))) {
                collect(history, table.key().get(0), owner, found);
            }
        }
    }

    /**
     * True when the first column of the key tells a person's rows from others': it is the whole key, or says whose they are. Of a key that begins
     * with a mere kind it does not, and rows of everybody would be taken.
     */
    private boolean identified(Table table, List<Reference> owners) {
        return table.key().size() == 1 || owners.stream().anyMatch(owner -> link(owner).equals(table.key().get(0)));
    }

    private List<Reference> owners(Table table) {
        return table.references().stream().filter(one -> keys.containsKey(one.parent()) && !one.parent().equals(table.name())).toList();
    }

    /** The column that holds the key of the row referred to. */
    private String link(Reference owner) {
        String key = tables.named(owner.parent()).orElseThrow().key().get(0);
        return owner.columns().get(owner.parentColumns().indexOf(key));
    }

    private void collect(Table from, String key, Reference owner, Set<Object> into) throws SQLException {
        each(from, List.of(from.column(key)), link(owner), keys.get(owner.parent()), values -> into.add(values.get(key)));
    }

    /** Returns the rows by table, those without any left out; values as {@link Column#read} gives them. */
    Map<String, List<Map<String, Object>>> read() throws SQLException {
        Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
        for (Table table : tables.all()) {
            Set<Map<String, Object>> rows = new LinkedHashSet<>();
            for (Place place : places(table)) {
                each(table, table.columns(), place.column(), place.values(), rows::add);
            }
            if (!rows.isEmpty()) {
                all.put(table.name(), List.copyOf(rows));
            }
        }
        return all;
    }

    /** Returns how many rows there are, by table. */
    Map<String, Integer> count() throws SQLException {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Table table : tables.all()) {
            Set<List<Object>> seen = new LinkedHashSet<>();
            List<Column> key = table.key().stream().map(table::column).toList();
            for (Place place : places(table)) {
                each(table, key, place.column(), place.values(), row -> seen.add(List.copyOf(row.values())));
            }
            if (!seen.isEmpty()) {
                counts.put(table.name(), seen.size());
            }
        }
        return counts;
    }

    /** Removes them all, those that refer before those referred to; returns how many. The caller holds the transaction. */
    long remove() throws SQLException {
        long removed = 0;
        List<Table> childrenFirst = new ArrayList<>(tables.all());
        Collections.reverse(childrenFirst);
        for (Table table : childrenFirst) {
            if (keys.containsKey(table.name())) {
                for (String self : table.toItself()) {
                    change("update " + table.name() + " set " + self + " = null where " + table.key().get(0) + " in ", table.column(table.key().get(0)),
                            keys.get(table.name()));
                }
            }
            for (Place place : places(table)) {
                removed += change("delete from " + table.name() + " where " + place.column() + " in ", table.column(place.column()), place.values());
            }
        }
        return removed;
    }

    /** Where in a table the person's rows are found. */
    private record Place(String column, Collection<Object> values) {
    }

    private List<Place> places(Table table) {
        Table of = tables.isHistory(table) ? tables.named(table.name().replaceFirst("_history$", "")).orElseThrow() : table;
        if (!keys.containsKey(of.name())) {
            return List.of();
        }
        List<Place> places = new ArrayList<>();
        if (table.has(of.key().get(0)) && identified(of, owners(of))) {
            places.add(new Place(of.key().get(0), keys.get(of.name())));
        }
        for (Reference owner : owners(of)) {
            if (table.has(link(owner)) && !link(owner).equals(of.key().get(0))) {
                places.add(new Place(link(owner), keys.get(owner.parent())));
            }
        }
        return places;
    }

    private interface RowTaker {
        void take(Map<String, Object> row);
    }

    private void each(Table table, List<Column> columns, String where, Collection<Object> values, RowTaker taker) throws SQLException {
        String select = "select " + columns.stream().map(Column::name).collect(Collectors.joining(", ")) + " from " + table.name() + " where " + where + " in ";
        for (List<Object> some : parts(values)) {
            try (PreparedStatement statement = prepared(select, table.column(where), some); ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    Map<String, Object> row = new LinkedHashMap<>();
                    for (int i = 0; i < columns.size(); i++) {
                        row.put(columns.get(i).name(), columns.get(i).read(rows, i + 1));
                    }
                    taker.take(row);
                }
            }
        }
    }

    private long change(String sql, Column column, Collection<Object> values) throws SQLException {
        long changed = 0;
        for (List<Object> some : parts(values)) {
            try (PreparedStatement statement = prepared(sql, column, some)) {
                changed += statement.executeUpdate();
            }
        }
        return changed;
    }

    private PreparedStatement prepared(String sql, Column column, List<Object> values) throws SQLException {
        PreparedStatement statement = db.prepareStatement(sql + "(" + String.join(", ", Collections.nCopies(values.size(), "?")) + ")");
        for (int i = 0; i < values.size(); i++) {
            column.write(statement, i + 1, values.get(i));
        }
        return statement;
    }

    private static List<List<Object>> parts(Collection<Object> values) {
        List<Object> all = List.copyOf(values);
        List<List<Object>> parts = new ArrayList<>();
        for (int from = 0; from < all.size(); from += AT_ONCE) {
            parts.add(all.subList(from, Math.min(all.size(), from + AT_ONCE)));
        }
        return parts;
    }
}
