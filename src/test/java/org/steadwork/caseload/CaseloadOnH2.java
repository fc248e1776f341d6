package org.steadwork.caseload;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** A clinic of its own, which the invented cases do not share with other tests. */
public class CaseloadOnH2 implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of("quarkus.datasource.jdbc.url",
                "jdbc:h2:mem:caseload;DB_CLOSE_DELAY=-1;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH");
    }
}
