package org.steadwork.account;

import io.quarkus.oidc.AuthorizationCodeTokens;
import io.quarkus.oidc.OidcRequestContext;
import io.quarkus.oidc.OidcTenantConfig;
import io.quarkus.oidc.TokenStateManager;
import io.quarkus.security.AuthenticationFailedException;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Alternative;

/** Keeps none of the provider's tokens: our own session begins once the ID token was read, and no cookie of the provider's flow ever opens anything. */
@Alternative
@Priority(1)
@ApplicationScoped
class NoTokensKept implements TokenStateManager {

    @Override
    public Uni<String> createTokenState(RoutingContext context, OidcTenantConfig tenant, AuthorizationCodeTokens tokens, OidcRequestContext<String> request) {
        return Uni.createFrom().item("none");
    }

    @Override
    public Uni<AuthorizationCodeTokens> getTokens(RoutingContext context, OidcTenantConfig tenant, String state,
            OidcRequestContext<AuthorizationCodeTokens> request) {
        return Uni.createFrom().failure(new AuthenticationFailedException("No tokens are kept"));
    }

    @Override
    public Uni<Void> deleteTokens(RoutingContext context, OidcTenantConfig tenant, String state, OidcRequestContext<Void> request) {
        return Uni.createFrom().voidItem();
    }
}
