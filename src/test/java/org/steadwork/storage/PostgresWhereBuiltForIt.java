package org.steadwork.storage;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import java.util.Map;
import org.steadwork.demo.RealPostgres;

/**
 * Gives every test that shares a clinic a real PostgreSQL when the tests run for it ({@code ./mvnw -Ppostgresql test}), and does nothing
 * otherwise. Found as a service, so that no test has to name it.
 */
public class PostgresWhereBuiltForIt implements QuarkusTestResourceLifecycleManager {

    private final RealPostgres server = new RealPostgres();
    private boolean started;

    @Override
    public Map<String, String> start() {
        if (!"postgresql".equals(System.getProperty("steadwork.database-kind"))) {
            return Map.of();
        }
        started = true;
        return server.start();
    }

    @Override
    public void stop() {
        if (started) {
            server.stop();
        }
    }
}
