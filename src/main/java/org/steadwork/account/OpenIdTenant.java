package org.steadwork.account;

import io.quarkus.oidc.OidcRequestContext;
import io.quarkus.oidc.OidcTenantConfig;
import io.quarkus.oidc.OidcTenantConfigBuilder;
import io.quarkus.oidc.TenantConfigResolver;
import io.quarkus.oidc.runtime.OidcTenantConfig.ApplicationType;
import io.smallrye.mutiny.Uni;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import org.apache.commons.codec.digest.HmacAlgorithms;
import org.apache.commons.codec.digest.HmacUtils;

/**
 * How the framework speaks with the clinic's provider: authorization code flow with PKCE, state and nonce. Whenever the framework itself looks
 * at a request there is no provider, so that none of its cookies and tokens lets anybody in anywhere; there is one only while {@link OpenIdFlow}
 * asks. The provider is first contacted when somebody signs in, so that a start needs nothing of it.
 */
@ApplicationScoped
class OpenIdTenant implements TenantConfigResolver {

    static final String ID = "openid";
    static final String BEGIN = "/sign-in/openid";
    static final String BACK = BEGIN + "/back";
    static final Duration TO_SIGN_IN_THERE = Duration.ofMinutes(10);
    private static final Duration TO_CONNECT = Duration.ofSeconds(5);
    private static final String ASKED = OpenIdTenant.class.getName();
    /** Under these names the framework keeps for the rest of a request what it was told at its beginning: that there is no provider. */
    private static final List<String> TOLD = List.of("dynamic.tenant.config", OidcTenantConfig.class.getName());
    private static final OidcTenantConfig NONE = OidcTenantConfig.builder().tenantId("none").tenantEnabled(false).build();

    @Inject
    OpenIdProvider provider;

    @Override
    public Uni<OidcTenantConfig> resolve(RoutingContext context, OidcRequestContext<OidcTenantConfig> request) {
        return Uni.createFrom().item(context.get(ASKED) == null ? NONE : config());
    }

    /** Lets there be the provider for the rest of this request, which must be one of the sign-in. */
    static RoutingContext asking(RoutingContext context) {
        context.put(ASKED, true);
        TOLD.forEach(context::remove);
        return context;
    }

    private OidcTenantConfig config() {
        OpenIdSettings settings = provider.settings();
        OidcTenantConfigBuilder tenant = OidcTenantConfig.authServerUrl(settings.provider()).tenantId(ID).applicationType(ApplicationType.WEB_APP)
                .clientId(settings.clientId()).credentials(settings.secret()).connectionTimeout(TO_CONNECT)
                .token().issuer(settings.provider()).allowJwtIntrospection(false).allowOpaqueTokenIntrospection(false).end();
        var flow = tenant.authentication().redirectPath(BACK).pkceRequired().nonceRequired().stateSecret(stateSecret(settings)).cookiePath(BEGIN)
                .stateCookieAge(TO_SIGN_IN_THERE).removeRedirectParameters(false).scopes(settings.scopes());
        if (settings.prompt() != null) {
            flow.extraParam("prompt", settings.prompt());
        }
        return flow.end().build();
    }

    /** The key of the cookie that keeps nonce and PKCE verifier; the same on every node, since the way back may lead to another. */
    private static String stateSecret(OpenIdSettings settings) {
        return new HmacUtils(HmacAlgorithms.HMAC_SHA_256, settings.secret()).hmacHex("state of a sign-in at " + settings.provider()).substring(0, 32);
    }
}
