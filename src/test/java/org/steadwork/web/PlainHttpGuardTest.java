package org.steadwork.web;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.microprofile.config.Config;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steadwork.kernel.RefusedStartException;

/** Records leave this machine only encrypted, unless somebody said in words that they may not be. */
class PlainHttpGuardTest {

    private static final String STORE = "quarkus.http.ssl.certificate.key-store-file";

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "127.8.9.10", "localhost", "LOCALHOST", "::1", "[::1]", " 127.0.0.1 "})
    void thisMachineAloneNeedsNothing(String host) {
        assertDoesNotThrow(() -> PlainHttpGuard.check(config(host, Map.of())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "::", "[::]", "192.168.1.20", "clinic.example", "127.0.0.1.example", "localhost.example", "12.7.0.1", "1270.0.0.1"})
    void otherAddressesAreRefusedWithoutTls(String host) {
        RefusedStartException refused = assertThrows(RefusedStartException.class, () -> PlainHttpGuard.check(config(host, Map.of())));
        assertTrue(refused.getMessage().contains("in the clear") && refused.getMessage().contains(PlainHttpGuard.WORDS), refused.getMessage());
    }

    @Test
    void aCertificateIsNotEnoughWhilePlainRequestsAreServed() {
        assertThrows(RefusedStartException.class, () -> PlainHttpGuard.check(config("0.0.0.0", Map.of(STORE, "clinic.p12"))));
        assertThrows(RefusedStartException.class, () -> PlainHttpGuard.check(config("0.0.0.0", Map.of(STORE, "clinic.p12", "quarkus.http.insecure-requests", "enabled"))));
        assertThrows(RefusedStartException.class, () -> PlainHttpGuard.check(config("0.0.0.0", Map.of("quarkus.http.insecure-requests", "redirect"))));
        assertDoesNotThrow(() -> PlainHttpGuard.check(config("0.0.0.0", Map.of(STORE, "clinic.p12", "quarkus.http.insecure-requests", "redirect"))));
        assertDoesNotThrow(() -> PlainHttpGuard.check(config("0.0.0.0", Map.of(STORE, "clinic.p12", "quarkus.http.insecure-requests", "disabled"))));
    }

    @Test
    void theSettingMustSayTheWords() {
        assertThrows(RefusedStartException.class, () -> PlainHttpGuard.check(config("0.0.0.0", Map.of(PlainHttpGuard.SETTING, "true"))));
        assertThrows(RefusedStartException.class, () -> PlainHttpGuard.check(config("0.0.0.0", Map.of(PlainHttpGuard.SETTING, "I know"))));
        assertDoesNotThrow(() -> PlainHttpGuard.check(config("0.0.0.0", Map.of(PlainHttpGuard.SETTING, PlainHttpGuard.WORDS))));
    }

    private static Config config(String host, Map<String, String> more) {
        Map<String, String> values = new HashMap<>(more);
        values.put("quarkus.http.host", host);
        return new SmallRyeConfigBuilder().withSources(new PropertiesConfigSource(values, "test", 100)).build();
    }
}
