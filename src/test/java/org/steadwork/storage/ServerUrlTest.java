package org.steadwork.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfigBuilder;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.config.Config;
import org.junit.jupiter.api.Test;
import org.steadwork.kernel.RefusedStartException;

/** What is added to the address of a database does what it is for, asked from a real server; each build refuses the other's address. */
class ServerUrlTest {

    @Test
    void theServerHoldsStatementsToTheirBounds() throws Exception {
        try (EmbeddedPostgres server = EmbeddedPostgres.start()) {
            String named = ServerUrl.named(server.getJdbcUrl("postgres", "postgres"));
            assertEquals(List.of("0", "0", "0", "steadwork"), shown(named));
            String bounded = ServerUrl.bounded(named, config(Map.of("steadwork.postgresql.statement-timeout-seconds", "1")));
            assertEquals(List.of("1s", "10s", "5min", "steadwork"), shown(bounded));
            try (Connection db = DriverManager.getConnection(bounded, "postgres", "postgres"); Statement sql = db.createStatement()) {
                assertEquals("57014", assertThrows(SQLException.class, () -> sql.execute("select pg_sleep(5)")).getSQLState());
            }
            String own = ServerUrl.bounded(ServerUrl.named(server.getJdbcUrl("postgres", "postgres") + "&options=-c%20lock_timeout=7s&ApplicationName=desk"), config(Map.of()));
            assertEquals(List.of("0", "7s", "0", "desk"), shown(own));
        }
    }

    private static List<String> shown(String url) throws SQLException {
        try (Connection db = DriverManager.getConnection(url, "postgres", "postgres"); Statement sql = db.createStatement();
                ResultSet row = sql.executeQuery("select current_setting('statement_timeout'), current_setting('lock_timeout'),"
                        + " current_setting('idle_in_transaction_session_timeout'), current_setting('application_name')")) {
            row.next();
            return List.of(row.getString(1), row.getString(2), row.getString(3), row.getString(4));
        }
    }

    @Test
    void eachBuildRefusesTheOthersAddress() {
        String file = "jdbc:h2:file:./data/clinic";
        refused("postgresql", file, "No database is named");
        refused("postgresql", "jdbc:postgres://host/clinic", "does not begin with jdbc:postgresql://");
        refused("h2", "jdbc:postgresql://host/clinic", "Use the one that is built for it");
        assertTrue(DatabasePlace.from(config(Map.of("quarkus.datasource.jdbc.url", file))).h2File());
        DatabasePlace server = DatabasePlace.from(config(Map.of("steadwork.database-kind", "postgresql", "quarkus.datasource.jdbc.url", "jdbc:postgresql://host/clinic?password=x")));
        assertEquals("jdbc:postgresql://host/clinic", server.toString());
    }

    private static void refused(String kind, String url, String words) {
        Config config = config(Map.of("steadwork.database-kind", kind, "quarkus.datasource.jdbc.url", url));
        String said = assertThrows(RefusedStartException.class, () -> DatabasePlace.from(config)).getMessage();
        assertTrue(said.contains(words), said);
    }

    private static Config config(Map<String, String> settings) {
        Map<String, String> all = new HashMap<>(settings);
        all.putIfAbsent("steadwork.data-folder", "data");
        return new SmallRyeConfigBuilder().withSources(new PropertiesConfigSource(all, "test", 100)).build();
    }
}
