package org.steadwork.account;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** A clinic that asks everybody for one-time codes, and keeps their keys encrypted. */
public class RequiredCodes implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of("steadwork.sign-in.second-factor", "required", "steadwork.secret-key", "some words of a test clinic, long enough for a key");
    }
}
