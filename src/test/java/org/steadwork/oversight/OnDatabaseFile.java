package org.steadwork.oversight;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** An empty clinic on a database file of its own, as the product keeps it. */
public class OnDatabaseFile implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of("quarkus.datasource.jdbc.url", "jdbc:h2:file:./target/bench-" + System.nanoTime()
                + "/clinic;WRITE_DELAY=0;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH", "steadwork.audit.seal-every-seconds", "1");
    }
}
