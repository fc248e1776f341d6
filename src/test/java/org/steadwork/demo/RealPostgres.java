package org.steadwork.demo;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/** A real PostgreSQL server of its own, started for the tests and thrown away after them. */
public class RealPostgres implements QuarkusTestResourceLifecycleManager {

    private EmbeddedPostgres server;

    @Override
    public Map<String, String> start() {
        try {
            server = EmbeddedPostgres.start();
        } catch (IOException e) {
            throw new UncheckedIOException("The PostgreSQL for the persistence tests does not start", e);
        }
        return Map.of("quarkus.datasource.jdbc.url", server.getJdbcUrl("postgres", "postgres"),
                "quarkus.datasource.username", "postgres", "quarkus.datasource.password", "postgres");
    }

    @Override
    public void stop() {
        try {
            server.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
