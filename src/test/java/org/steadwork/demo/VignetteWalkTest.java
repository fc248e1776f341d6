package org.steadwork.demo;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steadwork.account.DemoPassword;
import org.steadwork.content.Content;

/**
 * Walks invented cases through the pages, from registering the patient to the last letter, as the files describe it: the first four in the
 * usual run, with {@code -Dsteadwork.everything=true} all of them.
 */
@QuarkusTest
@Tag("own-clinic")
@Tag("longer")
@TestProfile(OnWalkClock.class)
class VignetteWalkTest {

    private static final int USUAL = 4;

    @TestHTTPResource("/")
    URI address;

    @Inject
    WalkClock clock;

    @Inject
    DemoLoader loader;

    static List<String> cases() {
        List<String> all = Content.yaml("demo/clinic.yaml").texts("cases");
        return Boolean.getBoolean("steadwork.everything") ? all : all.subList(0, USUAL);
    }

    @BeforeEach
    void theAccountsAreThere() {
        QuarkusTransaction.requiringNew().run(() -> loader.clinic(Content.yaml("demo/clinic.yaml")));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theCaseGoesAsItsFileSays(String key) {
        new VignetteWalk(key, (moment, account) -> {
            clock.moveTo(moment);
            return VignetteWalk.signIn(address, account, DemoPassword.VALUE);
        }).walk();
    }
}
