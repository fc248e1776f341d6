package org.steadwork.account;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** A browser that goes to the provider and comes back, as far as tests need one: each step can be done wrongly. */
final class ProviderFlow {

    private final ProviderStub stub;
    private final String issuer;
    private final Map<String, String> cookies = new HashMap<>();
    private final String code = UUID.randomUUID().toString();
    private Map<String, String> asked = Map.of();

    ProviderFlow(ProviderStub stub, String issuer) {
        this.stub = stub;
        this.issuer = issuer;
    }

    /** Goes from the sign-in page to the provider, whose page would be asked for with the parameters returned. */
    Map<String, String> begin(String to) {
        Response answer = request().queryParam("to", to).get("/sign-in/openid");
        assertEquals(303, answer.statusCode());
        String there = answer.header("Location");
        assertEquals(issuer + "/authorize", there.replaceAll("\\?.*", ""));
        cookies.putAll(answer.cookies());
        asked = parameters(URI.create(there));
        return asked;
    }

    /** What the provider's ID token says of somebody who signed in there for this flow. */
    Map<String, Object> claims(String subject, String userName, String... roles) {
        long now = Instant.now(java.time.Clock.systemUTC()).getEpochSecond();
        Map<String, Object> claims = new LinkedHashMap<>(Map.of("iss", issuer, "aud", WithProvider.CLIENT, "sub", subject, "preferred_username", userName, "iat", now,
                "exp", now + 300, "nonce", String.valueOf(asked.get("nonce")), "access", Map.of("roles", List.of(roles))));
        claims.put("name", "Somebody Invented");
        return claims;
    }

    /** Comes back with a code for which the provider gives a token of these claims. */
    Response back(Map<String, Object> claims) {
        return backWith(stub.signed(claims));
    }

    Response backWith(String idToken) {
        stub.answers(code, idToken);
        return back(code, asked.get("state"));
    }

    Response back(String someCode, String state) {
        RequestSpecification request = request();
        if (someCode != null) {
            request = request.queryParam("code", someCode);
        }
        return request.queryParam("state", state).get("/sign-in/openid/back");
    }

    RequestSpecification request() {
        return given().redirects().follow(false).cookies(cookies).header("X-Forwarded-For", SignInTest.somewhere());
    }

    String code() {
        return code;
    }

    String state() {
        return asked.get("state");
    }

    /** Forgets the cookies, as a browser that has waited too long. */
    void forget() {
        cookies.clear();
    }

    /** Returns the token of our own session that an answer begins, null when it begins none. */
    static String session(Response answer) {
        String token = answer.cookie("steadwork-session");
        return token == null || token.isBlank() ? null : token;
    }

    /** Returns where the page that goes on by itself leads to. */
    static String next(Response answer) {
        assertEquals(200, answer.statusCode(), answer.asString());
        Document page = Jsoup.parse(answer.asString());
        return page.select("meta[http-equiv=refresh]").attr("content").replaceAll("^0; url=", "");
    }

    static Map<String, String> parameters(URI address) {
        Map<String, String> parameters = new LinkedHashMap<>();
        for (String pair : address.getRawQuery().split("&")) {
            String[] parts = pair.split("=", 2);
            parameters.put(parts[0], URLDecoder.decode(parts[1], StandardCharsets.UTF_8));
        }
        return parameters;
    }
}
