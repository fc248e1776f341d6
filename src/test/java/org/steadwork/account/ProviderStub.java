package org.steadwork.account;

import static com.github.tomakehurst.wiremock.client.WireMock.aResponse;
import static com.github.tomakehurst.wiremock.client.WireMock.containing;
import static com.github.tomakehurst.wiremock.client.WireMock.get;
import static com.github.tomakehurst.wiremock.client.WireMock.okJson;
import static com.github.tomakehurst.wiremock.client.WireMock.post;
import static com.github.tomakehurst.wiremock.client.WireMock.postRequestedFor;
import static com.github.tomakehurst.wiremock.client.WireMock.urlEqualTo;
import static com.github.tomakehurst.wiremock.core.WireMockConfiguration.options;

import com.github.tomakehurst.wiremock.WireMockServer;
import io.smallrye.jwt.build.Jwt;
import java.net.URI;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.NoSuchAlgorithmException;
import java.security.interfaces.RSAPublicKey;
import java.util.Arrays;
import java.util.Base64;
import java.util.Map;

/** An OpenID Connect provider as far as a sign-in needs one: its description, its key, and an ID token for a code. */
final class ProviderStub {

    private static final String KEY_ID = "key-of-tests";

    private final String issuer;
    private final WireMockServer server;
    private final KeyPair keys = keys();

    ProviderStub(String issuer) {
        this.issuer = issuer;
        this.server = new WireMockServer(options().port(URI.create(issuer).getPort()));
        server.start();
        server.stubFor(get(urlEqualTo("/clinic/.well-known/openid-configuration")).willReturn(okJson("""
                {"issuer":"%1$s","authorization_endpoint":"%1$s/authorize","token_endpoint":"%1$s/token","jwks_uri":"%1$s/keys",
                 "response_types_supported":["code"],"subject_types_supported":["public"],"id_token_signing_alg_values_supported":["RS256"]}"""
                .formatted(issuer))));
        RSAPublicKey key = (RSAPublicKey) keys.getPublic();
        server.stubFor(get(urlEqualTo("/clinic/keys")).willReturn(okJson("""
                {"keys":[{"kty":"RSA","use":"sig","alg":"RS256","kid":"%s","n":"%s","e":"%s"}]}""".formatted(KEY_ID,
                encoded(key.getModulus().toByteArray()), encoded(key.getPublicExponent().toByteArray())))));
    }

    void stop() {
        server.stop();
    }

    /** Lets this code be taken for this ID token. */
    void answers(String code, String idToken) {
        server.stubFor(post(urlEqualTo("/clinic/token")).withRequestBody(containing("code=" + code))
                .willReturn(okJson("{\"id_token\":\"%s\",\"access_token\":\"opaque-%s\",\"refresh_token\":\"refresh-%s\",\"token_type\":\"Bearer\",\"expires_in\":300}"
                        .formatted(idToken, code, code))));
    }

    /** Lets this code be refused, as one that was used before. */
    void refuses(String code) {
        server.stubFor(post(urlEqualTo("/clinic/token")).withRequestBody(containing("code=" + code))
                .willReturn(aResponse().withStatus(400).withHeader("Content-Type", "application/json").withBody("{\"error\":\"invalid_grant\"}")));
    }

    /** Returns what was sent to take this code for a token. */
    String asked(String code) {
        return server.findAll(postRequestedFor(urlEqualTo("/clinic/token")).withRequestBody(containing("code=" + code))).get(0).getBodyAsString();
    }

    String signed(Map<String, Object> claims) {
        return signedWith(keys, claims);
    }

    /** A token that says it is signed by the provider's key and is not. */
    String signedByAnother(Map<String, Object> claims) {
        return signedWith(keys(), claims);
    }

    private static String signedWith(KeyPair pair, Map<String, Object> claims) {
        return Jwt.claims(claims).jws().keyId(KEY_ID).sign(pair.getPrivate());
    }

    private static KeyPair keys() {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
            generator.initialize(2048);
            return generator.generateKeyPair();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String encoded(byte[] number) {
        int from = number.length > 1 && number[0] == 0 ? 1 : 0;
        return Base64.getUrlEncoder().withoutPadding().encodeToString(Arrays.copyOfRange(number, from, number.length));
    }
}
