package org.steadwork.storage;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.List;
import java.util.Map;
import org.steadwork.demo.RealPostgres;

/** An empty clinic on a real PostgreSQL; those who share it bring patients of their own. */
public class EmptyOnPostgres implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of("quarkus.datasource.db-kind", "postgresql");
    }

    @Override
    public List<TestResourceEntry> testResources() {
        return List.of(new TestResourceEntry(RealPostgres.class));
    }
}
