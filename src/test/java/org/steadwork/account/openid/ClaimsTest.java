package org.steadwork.account.openid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.steadwork.account.openid.RoleMapping.Meaning;

/** What the claims of an ID token mean here. */
class ClaimsTest {

    private static final RoleMapping<String> MAPPING = new RoleMapping<>(ClaimPath.of("access/roles"), List.of(new Meaning<>("LEAD", Set.of("clinic-leads")),
            new Meaning<>("CLINICIAN", Set.of("clinic-clinicians")), new Meaning<>("ASSISTANT", Set.of("front-desk", "reception"))));

    @ParameterizedTest(name = "{0} is {1}")
    @CsvFileSource(resources = "roles.csv", numLinesToSkip = 2, quoteCharacter = '\'')
    void valuesMeanRoles(String claims, String role) {
        assertEquals(role, MAPPING.roleOf(claims(claims)).orElse("none"));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvFileSource(resources = "methods.csv", numLinesToSkip = 2, quoteCharacter = '\'')
    void twoFactorsAreBelievedOnlyWhereTheTokenSaysSo(String methods, boolean two) {
        assertEquals(two, MethodsUsed.twoFactors(claims("{\"amr\":" + methods + "}")));
        assertFalse(MethodsUsed.twoFactors(claims("{\"acr\":\"mfa\"}")));
    }

    @Test
    void aPathNamesTheObjectsOnTheWay() {
        assertEquals(List.of("groups"), ClaimPath.of(" groups ").names());
        assertEquals(List.of("access", "roles"), ClaimPath.of("access/roles").names());
        assertEquals(List.of("https://clinic.example/roles", "list"), ClaimPath.of("\"https://clinic.example/roles\"/list").names());
        assertEquals(List.of("a"), claims("{\"https://clinic.example/roles\":[\"a\"]}").values(ClaimPath.of("\"https://clinic.example/roles\"")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "/", "/groups", "groups/", "access//roles", "\"groups", "\"\"", "a\"b\""})
    void whatIsNoPathIsRefused(String path) {
        assertThrows(IllegalArgumentException.class, () -> ClaimPath.of(path));
    }

    @Test
    void aClaimOfAnotherKindSaysNothing() {
        Claims claims = claims("{\"name\":\" A. Sample \",\"number\":7,\"blank\":\"  \",\"list\":[\"a\",1,null,\"b\"],\"yes\":true,\"word\":\"true\",\"no\":\"yes\"}");
        assertEquals("A. Sample", claims.text("name"));
        assertNull(claims.text("number"));
        assertNull(claims.text("blank"));
        assertNull(claims.text("missing"));
        assertEquals(List.of("a", "b"), claims.values("list"));
        assertTrue(claims.says("yes") && claims.says("word"));
        assertFalse(claims.says("no") || claims.says("number") || claims.says("missing"));
    }

    private static Claims claims(String json) {
        try {
            return new Claims(new ObjectMapper().readValue(json, new TypeReference<Map<String, Object>>() {
            }));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(json, e);
        }
    }
}
