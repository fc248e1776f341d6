package org.steadwork.account;

import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.NewCookie;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The cookie that holds the token of a session. Over TLS its name has the prefix {@code __Host-}, which browsers take only with Secure,
 * for this host alone and the path /. Over plain HTTP, as on the clinic's own machine, browsers refuse that prefix; a plain name is used,
 * and never taken over TLS.
 */
@ApplicationScoped
class SessionCookies {

    static final String PLAIN = "steadwork-session";
    static final String HOST = "__Host-steadwork-session";

    @Inject
    RequestOrigin origin;

    @ConfigProperty(name = "steadwork.session.longest-hours")
    int longestHours;

    /** Returns the token that came with the running request, null without one. */
    String token() {
        return origin.request().map(SessionCookies::token).orElse(null);
    }

    static String token(HttpServerRequest request) {
        Cookie cookie = request.getCookie(RequestOrigin.secure(request) ? HOST : PLAIN);
        return cookie == null || cookie.getValue().isBlank() ? null : cookie.getValue();
    }

    NewCookie of(String token) {
        return cookie(token, longestHours * 3600);
    }

    NewCookie ended() {
        return cookie("", 0);
    }

    private NewCookie cookie(String token, int maxAge) {
        boolean secure = origin.secure();
        return new NewCookie.Builder(secure ? HOST : PLAIN).value(token).path("/").httpOnly(true).secure(secure)
                .sameSite(NewCookie.SameSite.STRICT).maxAge(maxAge).build();
    }
}
