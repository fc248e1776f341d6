package org.steadwork.backup;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** The tables, views and sequences of a PostgreSQL database that are in no system schema, whosoever they are. */
record Contents(List<String> relations) {

    private static final String ALL = "select case c.relkind when 'S' then 'sequence' when 'v' then 'view' when 'm' then 'materialized view' else 'table' end"
            + " || ' ' || quote_ident(n.nspname) || '.' || quote_ident(c.relname) from pg_class c join pg_namespace n on n.oid = c.relnamespace"
            + " where c.relkind in ('r', 'p', 'v', 'm', 'f', 'S') and n.nspname not like 'pg\\_%' and n.nspname <> 'information_schema'";

    static Contents of(Connection db) throws SQLException {
        List<String> found = new ArrayList<>();
        try (PreparedStatement query = db.prepareStatement(ALL); ResultSet row = query.executeQuery()) {
            while (row.next()) {
                found.add(row.getString(1));
            }
        }
        return new Contents(found);
    }

    boolean isEmpty() {
        return relations.isEmpty();
    }

    /** Takes all of it away; only where everything was put there a moment ago. */
    void drop(Connection db) throws SQLException {
        try (Statement sql = db.createStatement()) {
            for (String relation : relations) {
                sql.execute("drop " + relation.replaceFirst(" ", " if exists ") + " cascade");
            }
        }
    }
}
