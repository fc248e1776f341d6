package org.steadwork.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;

/** The rules that stand in the database go on holding, and letting in, when the connection that made them is closed. */
class ChecksTest {

    private static final String URL = "jdbc:h2:mem:checks;DB_CLOSE_DELAY=-1;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";
    private static final String ACCOUNT = "insert into account (id, version, user_name, full_name, display_name, role, active, created_at)"
            + " values (%d, 0, 'user-%1$d', 'A', 'A', '%s', true, current_timestamp)";

    @Test
    void accountsAreTakenAfterTheMigratingConnectionIsClosed() throws SQLException {
        Flyway.configure().dataSource(URL, "", "").locations("classpath:db/migration").load().migrate();
        try (Connection later = DriverManager.getConnection(URL); Statement statement = later.createStatement()) {
            assertEquals(1, statement.executeUpdate(ACCOUNT.formatted(1, "LEAD")));
            assertEquals(1, statement.executeUpdate(ACCOUNT.formatted(2, "ASSISTANT")));
            assertThrows(SQLException.class, () -> statement.executeUpdate(ACCOUNT.formatted(3, "OWNER")));
            assertEquals(List.of(), lists(statement), "checks with a list of values, which refuse everything once their connection is closed");
        }
    }

    /** H2 2.4.240; when this fails, H2 was mended and lists may be used again. */
    @Test
    void aListOfValuesInACheckDoesNotOutliveItsConnection() throws SQLException {
        String url = "jdbc:h2:mem:lists;DB_CLOSE_DELAY=-1";
        try (Connection first = DriverManager.getConnection(url); Statement statement = first.createStatement()) {
            statement.execute("create table t (a varchar(9), constraint a_known check (a in ('x', 'y')))");
            statement.execute("insert into t values ('x')");
        }
        try (Connection later = DriverManager.getConnection(url); Statement statement = later.createStatement()) {
            SQLException refused = assertThrows(SQLException.class, () -> statement.execute("insert into t values ('x')"));
            assertEquals("23514", refused.getSQLState());
        }
    }

    private static List<String> lists(Statement statement) throws SQLException {
        List<String> found = new ArrayList<>();
        try (ResultSet row = statement.executeQuery("select constraint_name, check_clause from information_schema.check_constraints")) {
            while (row.next()) {
                if (row.getString(2).matches("(?s).*\\bIN ?\\(.*")) {
                    found.add(row.getString(1) + ": " + row.getString(2));
                }
            }
        }
        return found;
    }
}
