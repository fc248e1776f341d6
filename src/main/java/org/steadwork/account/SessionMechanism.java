package org.steadwork.account;

import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.AuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.smallrye.mutiny.Uni;
import io.smallrye.mutiny.infrastructure.Infrastructure;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/** Tells from the session cookie who is asking; who is not signed in is sent to the sign-in page. */
@ApplicationScoped
class SessionMechanism implements HttpAuthenticationMechanism {

    @Inject
    Sessions sessions;

    @Override
    public Uni<SecurityIdentity> authenticate(RoutingContext context, IdentityProviderManager providers) {
        String token = SessionCookies.token(context.request());
        if (token == null) {
            return Uni.createFrom().nullItem();
        }
        return Uni.createFrom().item(() -> (SecurityIdentity) sessions.identity(token).orElse(null))
                .runSubscriptionOn(Infrastructure.getDefaultWorkerPool());
    }

    @Override
    public Uni<ChallengeData> getChallenge(RoutingContext context) {
        String back = URLEncoder.encode(context.normalizedPath(), StandardCharsets.UTF_8);
        return Uni.createFrom().item(new ChallengeData(303, "Location", "/sign-in?to=" + back));
    }

    /** Before the framework's own for OpenID Connect, which lets nobody in by itself: {@link OpenIdTenant}. */
    @Override
    public int getPriority() {
        return DEFAULT_PRIORITY + 50;
    }

    @Override
    public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
        return Set.of();
    }
}
