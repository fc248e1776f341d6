package org.steadwork.account;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.oidc.IdTokenCredential;
import io.quarkus.oidc.runtime.OidcAuthenticationMechanism;
import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.smallrye.mutiny.TimeoutException;
import io.smallrye.mutiny.Uni;
import io.vertx.core.http.HttpClosedException;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URI;
import java.time.Duration;
import java.util.Base64;
import java.util.Map;
import org.jboss.logging.Logger;
import org.jose4j.jwt.consumer.ErrorCodes;
import org.jose4j.jwt.consumer.InvalidJwtException;
import org.steadwork.account.openid.Claims;

/** The way to the provider and back, by the framework's own mechanism, which finds a provider only when it is asked here. */
@ApplicationScoped
class OpenIdFlow {

    /** What kept somebody from coming back signed in. */
    enum Problem {
        /** The provider cannot be reached, or does not answer as one. */
        AWAY,
        /** What came back does not belong to a sign-in begun here, came too late, or is not signed rightly. */
        FAILED
    }

    /** @param problem null when the claims of a verified ID token are there */
    record Returned(Claims claims, Problem problem) {
    }

    private static final Duration LONGEST = Duration.ofSeconds(20);
    private static final String SESSION_COOKIE = "q_session_" + OpenIdTenant.ID;
    private static final int DEEPEST_CAUSE = 12;
    private static final Map<Integer, String> FLAWS = Map.of(ErrorCodes.EXPIRED, "the ID token has expired; do the clocks agree?", ErrorCodes.ISSUER_INVALID,
            "the issuer of the ID token is not the provider set", ErrorCodes.AUDIENCE_INVALID, "the ID token is for another client", ErrorCodes.SIGNATURE_INVALID,
            "the ID token is not signed by the provider");
    private static final Logger LOG = Logger.getLogger("steadwork");

    private final ObjectMapper json = new ObjectMapper();

    @Inject
    OidcAuthenticationMechanism mechanism;

    @Inject
    IdentityProviderManager identities;

    @Inject
    CurrentVertxRequest current;

    /** Returns where at the provider the sign-in goes on, and sets the cookie that knows it again; null when the provider cannot be reached. */
    URI begin() {
        try {
            ChallengeData challenge = wait(mechanism.getChallenge(OpenIdTenant.asking(current.getCurrent())));
            return challenge.getHeaders().entrySet().stream().filter(header -> header.getKey().toString().equalsIgnoreCase("location"))
                    .map(header -> URI.create(header.getValue())).findFirst().orElse(null);
        } catch (RuntimeException e) {
            LOG.warnf("The OpenID Connect provider cannot be used: %s", why(e));
            return null;
        }
    }

    /** Takes the code that came back for an ID token and checks that. */
    Returned back() {
        RoutingContext context = current.getCurrent();
        try {
            SecurityIdentity identity = wait(mechanism.authenticate(OpenIdTenant.asking(context), identities));
            return identity == null ? new Returned(null, Problem.FAILED) : new Returned(claims(identity), null);
        } catch (RuntimeException e) {
            LOG.warnf("A sign-in through OpenID Connect was not taken: %s", why(e));
            return new Returned(null, away(e) ? Problem.AWAY : Problem.FAILED);
        } finally {
            context.response().removeCookie(SESSION_COOKIE, false);
        }
    }

    private Claims claims(SecurityIdentity identity) {
        String token = identity.getCredential(IdTokenCredential.class).getToken();
        try {
            Map<String, Object> all = json.readValue(Base64.getUrlDecoder().decode(token.split("\\.")[1]), new TypeReference<>() {
            });
            return new Claims(all);
        } catch (IOException e) {
            throw new IllegalStateException("A verified ID token cannot be read", e);
        }
    }

    private static <T> T wait(Uni<T> asked) {
        return asked.await().atMost(LONGEST);
    }

    private static boolean away(Throwable e) {
        Throwable cause = e;
        for (int i = 0; cause != null && i < DEEPEST_CAUSE; i++) {
            if (cause instanceof IOException || cause instanceof TimeoutException || cause instanceof HttpClosedException) {
                return true;
            }
            cause = cause.getCause();
        }
        return false;
    }

    /** What went wrong first, for the log, without its message: that may hold a token, or the claims of a person. */
    private static String why(Throwable e) {
        Throwable cause = e;
        for (int i = 0; cause.getCause() != null && !(cause instanceof InvalidJwtException) && i < DEEPEST_CAUSE; i++) {
            cause = cause.getCause();
        }
        if (cause instanceof InvalidJwtException token) {
            return FLAWS.entrySet().stream().filter(flaw -> token.hasErrorCode(flaw.getKey())).map(Map.Entry::getValue).findFirst()
                    .orElse("the ID token does not hold");
        }
        return cause.getClass().getSimpleName();
    }
}
