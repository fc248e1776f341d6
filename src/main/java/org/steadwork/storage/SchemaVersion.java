package org.steadwork.storage;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import org.flywaydb.core.api.MigrationVersion;
import org.steadwork.tables.Tables;

/** The version of a database's schema: that of the last migration it had, such as 2026.11.25.01. Versions compare by their numbers. */
public final class SchemaVersion {

    private SchemaVersion() {
    }

    /** Returns it, or empty when the database was never migrated. */
    public static Optional<String> of(Connection db) throws SQLException {
        try (ResultSet table = db.getMetaData().getTables(null, db.getSchema(), Tables.MIGRATIONS, null)) {
            if (!table.next()) {
                return Optional.empty();
            }
        }
        try (Statement statement = db.createStatement();
                ResultSet row = statement.executeQuery("select \"version\" from " + Tables.MIGRATIONS
                        + " where \"success\" = true and \"version\" is not null order by \"installed_rank\"")) {
            String last = null;
            while (row.next()) {
                last = last == null || compare(row.getString(1), last) > 0 ? row.getString(1) : last;
            }
            return Optional.ofNullable(last);
        }
    }

    /** Compares two versions, number by number. */
    public static int compare(String one, String other) {
        return MigrationVersion.fromVersion(one).compareTo(MigrationVersion.fromVersion(other));
    }
}
