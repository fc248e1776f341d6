package org.steadwork.account;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.steadwork.account.openid.Claims;
import org.steadwork.kernel.RefusedStartException;

/** What is set for the provider is whole, or the start is refused in words. */
class OpenIdSettingsTest {

    private static final Map<String, String> LEAST = Map.of("provider", "https://people.example/clinic", "client-id", "steadwork", "secret", "sixteen letters!");

    @Test
    void nothingIsSetByItself() {
        assertTrue(read(Map.of()).isEmpty());
        assertTrue(read(Map.of("provider", "  ", "client-id", "steadwork", "name", "People")).isEmpty());
    }

    @Test
    void theLeastIsProviderIdAndSecret() {
        OpenIdSettings settings = read(LEAST).orElseThrow();
        assertEquals("OpenID Connect", settings.name());
        assertEquals("preferred_username", settings.nameClaim());
        assertNull(settings.roles());
        assertFalse(settings.createAccounts());
        assertEquals(List.of("profile"), settings.scopes());
        assertNull(settings.prompt());
    }

    @Test
    void valuesMeanRoles() {
        OpenIdSettings settings = read(with(Map.of("roles-claim", "groups", "roles.lead", "leads", "roles.assistant", " front desk , reception,", "create-accounts", "true",
                "scopes", "openid, profile groups"))).orElseThrow();
        assertEquals(List.of("profile", "groups"), settings.scopes());
        assertTrue(settings.createAccounts());
        assertEquals(Optional.of(Role.LEAD), role(settings, "reception", "leads"));
        assertEquals(Optional.of(Role.ASSISTANT), role(settings, "front desk"));
        assertEquals(Optional.empty(), role(settings, "clinicians"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"client-id", "secret"})
    void whatIsMissingIsNamed(String name) {
        Map<String, String> less = new HashMap<>(LEAST);
        less.remove(name);
        assertTrue(refusal(less).contains("steadwork.openid." + name), refusal(less));
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://people.example/clinic", "people.example", "ftp://people.example", "https:///clinic", "http://localhost.example", "ht tp:"})
    void theWayToTheProviderIsEncrypted(String provider) {
        assertTrue(refusal(with(Map.of("provider", provider))).contains("provider"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://localhost:9000/clinic", "http://127.0.0.1:9000", "http://[::1]:9000"})
    void onThisMachineItNeedNotBe(String provider) {
        assertEquals(provider, read(with(Map.of("provider", provider))).orElseThrow().provider());
    }

    @ParameterizedTest
    @CsvSource({"roles-claim,groups,no value of it means a role", "roles.lead,leads,not the claim they stand in", "create-accounts,true,needs roles-claim",
        "create-accounts,yes,true or false", "secret,short,fewer than 16", "name,A name that is much too long for a button here,more than 40"})
    void contradictionsAreNamed(String name, String value, String words) {
        assertTrue(refusal(with(Map.of(name, value))).contains(words), refusal(with(Map.of(name, value))));
    }

    @Test
    void noValueMeansTwoRolesAndNoPathIsBroken() {
        assertTrue(refusal(with(Map.of("roles-claim", "groups", "roles.lead", "a,b", "roles.clinician", "b"))).contains("two roles: b"));
        assertTrue(refusal(with(Map.of("roles-claim", "access//roles", "roles.lead", "a"))).contains("no path of a claim"));
    }

    private static Optional<Role> role(OpenIdSettings settings, String... groups) {
        return settings.roles().roleOf(new Claims(Map.of("groups", List.of(groups))));
    }

    private static Map<String, String> with(Map<String, String> more) {
        Map<String, String> all = new HashMap<>(LEAST);
        all.putAll(more);
        return all;
    }

    private static String refusal(Map<String, String> values) {
        return assertThrows(RefusedStartException.class, () -> read(values)).getMessage();
    }

    private static Optional<OpenIdSettings> read(Map<String, String> values) {
        Map<String, String> named = new HashMap<>();
        values.forEach((name, value) -> named.put("steadwork.openid." + name, value));
        return OpenIdSettings.read(new SmallRyeConfigBuilder().withSources(new PropertiesConfigSource(named, "test", 100)).build());
    }
}
