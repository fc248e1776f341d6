package org.steadwork.casefile.access;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** A clinic in which those who treat a case open it. */
public class ByCareTeam implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        // a database of its own, so that what other tests leave behind is not asked about here
        return Map.of("steadwork.access", "care-team", "quarkus.datasource.jdbc.url",
                "jdbc:h2:mem:careteam;DB_CLOSE_DELAY=-1;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH");
    }
}
