package org.steadwork.casefile.access;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** A clinic in which those who treat a case open it. */
public class ByCareTeam implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of("steadwork.access", "care-team");
    }
}
