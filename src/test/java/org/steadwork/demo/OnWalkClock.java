package org.steadwork.demo;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;
import java.util.Set;

/** An empty clinic of its own, whose clock the walk moves. */
public class OnWalkClock implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of("quarkus.datasource.jdbc.url",
                "jdbc:h2:mem:walk;DB_CLOSE_DELAY=-1;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH",
                "steadwork.clinic.name", "Alderwick Occupational Physiotherapy", "steadwork.clinic.phone", "01632 960100");
    }

    @Override
    public Set<Class<?>> getEnabledAlternatives() {
        return Set.of(WalkClock.class);
    }
}
