package org.steadwork.exchange.report;

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
import java.util.Optional;
import java.util.Set;

/** Lets in a program that bears a token, at the addresses for reporting and nowhere else. Source: RFC 6750. */
@ApplicationScoped
class BearerMechanism implements HttpAuthenticationMechanism {

    private static final String SCHEME = "Bearer ";

    @Inject
    ReportTokens tokens;

    @Override
    public Uni<SecurityIdentity> authenticate(RoutingContext context, IdentityProviderManager providers) {
        Optional<String> token = token(context);
        if (token.isEmpty()) {
            return Uni.createFrom().nullItem();
        }
        // a token that does not hold makes nobody of its bearer; the route then answers in words
        return Uni.createFrom().item(() -> (SecurityIdentity) tokens.identity(token.get()).orElse(null))
                .runSubscriptionOn(Infrastructure.getDefaultWorkerPool());
    }

    private static Optional<String> token(RoutingContext context) {
        String header = context.request().getHeader("Authorization");
        boolean bears = header != null && header.regionMatches(true, 0, SCHEME, 0, SCHEME.length());
        return bears && concerns(context) ? Optional.of(header.substring(SCHEME.length()).strip()) : Optional.empty();
    }

    private static boolean concerns(RoutingContext context) {
        return context.normalizedPath().startsWith(ReportApi.FOLDER);
    }

    @Override
    public Uni<ChallengeData> getChallenge(RoutingContext context) {
        return concerns(context) ? Uni.createFrom().item(new ChallengeData(401, "WWW-Authenticate", "Bearer")) : Uni.createFrom().nullItem();
    }

    @Override
    public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
        return Set.of();
    }

    /** Before the mechanism of the sessions, which answers by the sign-in page. */
    @Override
    public int getPriority() {
        return DEFAULT_PRIORITY + 100;
    }
}
