package org.steadwork.caseload;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.List;
import java.util.Map;
import org.steadwork.demo.RealPostgres;

/** The same on a real PostgreSQL. */
public class CaseloadOnPostgres implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of("quarkus.datasource.db-kind", "postgresql");
    }

    @Override
    public List<TestResourceEntry> testResources() {
        return List.of(new TestResourceEntry(RealPostgres.class));
    }
}
