package org.steadwork.demo;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.List;
import java.util.Map;

/** The demo clinic on PostgreSQL; the kind of database is fixed when the application is built, so this profile builds it anew. */
public class OnPostgres implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of("quarkus.datasource.db-kind", "postgresql", "steadwork.demo", "true", "steadwork.demo-now", OnH2.DEMO_DAY,
                "steadwork.clinic.name", "Alderwick Occupational Physiotherapy", "steadwork.clinic.phone", "01632 960100");
    }

    @Override
    public List<TestResourceEntry> testResources() {
        return List.of(new TestResourceEntry(RealPostgres.class));
    }
}
