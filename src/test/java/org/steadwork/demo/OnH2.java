package org.steadwork.demo;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** The demo clinic on H2, in a database of its own. */
public class OnH2 implements QuarkusTestProfile {

    static final String DEMO_DAY = "2030-12-16T09:10";

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of("quarkus.datasource.jdbc.url",
                "jdbc:h2:mem:demo;DB_CLOSE_DELAY=-1;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH",
                "steadwork.demo", "true", "steadwork.demo-now", DEMO_DAY,
                "steadwork.clinic.name", "Alderwick Occupational Physiotherapy", "steadwork.clinic.phone", "01632 960100");
    }
}
